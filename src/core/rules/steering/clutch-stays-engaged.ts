import type { Rule } from '../rule.ts';
import { eachCheck } from './drive-words.ts';

export const clutchStaysEngaged: Rule = {
  id: 'steering/clutch-stays-engaged',
  level: 'danger',
  title: 'The pilot keeps hold of the helm when its power or its bus is lost.',
  sources: ['choice-let-go'],
  check: (input) =>
    eachCheck(input, ['power-lost', 'bus-lost'], ({ check, drive, computer }) =>
      check.check === 'power-lost'
        ? {
            says: `${drive} holds the helm when its power is lost, and not every steering place has a lever within reach to free it.`,
            cure: 'Take a drive whose clutch or bypass lets go without current, or fit a lever or hand valve within reach of every steering place.',
          }
        : {
            says: `${computer} keeps the clutch of ${drive} engaged when its bus is lost: the keys are dead and the helm is not free.`,
            cure: 'Set the computer to let go when the bus is lost, or take one that does; try it at the berth by pulling the bus.',
          },
    ),
};
