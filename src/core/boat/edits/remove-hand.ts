import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { changeWork } from './change-work.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Takes somebody who works out; jobs given to that person are for whoever can. */
export const removeHand = defineEdit({
  id: 'remove-hand',
  params: z.strictObject({ hand: idSchema }),
  title: ({ hand }, { work }) => `Reckon without the hands of ${nameInBoat(work?.hands ?? [], hand)}.`,
  change: (boat, { hand }) => {
    findInBoat(boat.work?.hands ?? [], hand, 'hand');
    changeWork(boat, (work) => {
      work.hands = (work.hands ?? []).filter(({ id }) => id !== hand);
      for (const settled of work.jobs ?? []) if (settled.hand === hand) delete settled.hand;
      const left = (work.jobs ?? []).filter((settled) => Object.keys(settled).length > 1);
      if (work.jobs !== undefined) work.jobs = left;
    });
  },
});
