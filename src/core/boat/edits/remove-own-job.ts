import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { changeWork } from './change-work.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Takes a job of the person’s own out. */
export const removeOwnJob = defineEdit({
  id: 'remove-own-job',
  params: z.strictObject({ job: idSchema }),
  title: ({ job }, { work }) => `Take out the job “${nameInBoat(work?.own ?? [], job)}”.`,
  change: (boat, { job }) => {
    findInBoat(boat.work?.own ?? [], job, 'job of your own');
    changeWork(boat, (work) => {
      work.own = (work.own ?? []).filter(({ id }) => id !== job);
    });
  },
});
