import * as z from 'zod';
import { workSchema } from '../work.ts';
import { changeWork } from './change-work.ts';
import { defineEdit } from './define-edit.ts';
import { nameInBoat } from './name-in-boat.ts';

const ownOfJob = workSchema.shape.jobs.unwrap().element.shape;
const forgettable = ['day', 'hand', 'hoursH', 'leftOut', 'after', 'lockedOff'] as const;

const forgotten = {
  day: 'no longer held to a day',
  hand: 'for whoever can',
  hoursH: 'as long as usual',
  leftOut: 'done after all',
  after: 'waits for nothing more',
  lockedOff: 'not locked off',
} as const satisfies Readonly<Record<(typeof forgettable)[number], string>>;

/** Says of one job when, by whom and how long it is done, or that it is not; what is left out stays, what is in `forget` is no longer said. */
export const settleJob = defineEdit({
  id: 'settle-job',
  params: z.strictObject({ ...ownOfJob, forget: z.exactOptional(z.array(z.enum(forgettable)).min(1)) }),
  title: ({ job, day, hand, hoursH, leftOut, after, lockedOff, forget = [] }, { work }) => {
    const facts = [
      ...(day === undefined ? [] : [`on ${day}`]),
      ...(hand === undefined ? [] : [`by ${nameInBoat(work?.hands ?? [], hand)}`]),
      ...(hoursH === undefined ? [] : [`${hoursH} h`]),
      ...(leftOut === undefined ? [] : ['left out']),
      ...(after === undefined ? [] : [`after ${after.join(', ')}`]),
      ...(lockedOff === undefined ? [] : ['locked off and tagged']),
      ...forget.map((field) => forgotten[field]),
    ];
    return `Job ${job}: ${facts.join(', ')}.`;
  },
  change: (boat, { job, forget = [], ...wanted }) =>
    changeWork(boat, (work) => {
      const settled = { ...(work.jobs ?? []).find((own) => own.job === job), job };
      for (const field of forget) delete settled[field];
      Object.assign(settled, wanted);
      const others = (work.jobs ?? []).filter((own) => own.job !== job);
      work.jobs = Object.keys(settled).length === 1 ? others : [...others, settled];
    }),
});
