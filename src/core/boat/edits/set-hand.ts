import { handSchema } from '../work.ts';
import { changeWork } from './change-work.ts';
import { defineEdit } from './define-edit.ts';

/** Puts somebody who works into the boat, in place of what was said of the same person. */
export const setHand = defineEdit({
  id: 'set-hand',
  params: handSchema,
  title: ({ name, pace }) =>
    `Reckon with the hands of ${name}${pace === undefined ? '' : `, ${pace} times the usual hours`}.`,
  change: (boat, hand) =>
    changeWork(boat, (work) => {
      work.hands = [...(work.hands ?? []).filter(({ id }) => id !== hand.id), hand];
    }),
});
