import type { Fault } from '../../fault.ts';
import { withDay } from './with-day.ts';

/** A day in which nothing runs but the radio. */
export const energyOneUnitTakesMost: Fault = {
  rule: 'energy/one-unit-takes-most',
  about: ['radio'],
  plant: (boat) =>
    withDay(boat, {
      id: 'listening',
      name: 'Listening day',
      like: 'alongside',
      hours: [{ unit: 'radio', hours: 24 }],
    }),
};
