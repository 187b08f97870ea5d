import { workSchema } from '../work.ts';
import { changeWork } from './change-work.ts';
import { defineEdit } from './define-edit.ts';

/** Puts a job of the person’s own into the boat, in place of one with the same id. */
export const setOwnJob = defineEdit({
  id: 'set-own-job',
  params: workSchema.shape.own.unwrap().element,
  title: ({ name, hoursH }) => `Reckon with the job “${name}”, ${hoursH} h.`,
  change: (boat, job) =>
    changeWork(boat, (work) => {
      work.own = [...(work.own ?? []).filter(({ id }) => id !== job.id), job];
    }),
});
