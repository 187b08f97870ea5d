import * as z from 'zod';
import { workSchema } from '../work.ts';
import { changeWork } from './change-work.ts';
import { defineEdit } from './define-edit.ts';
import { termNames, workInWords } from './work-in-words.ts';

const {
  hands: _hands,
  essentials: _essentials,
  jobs: _jobs,
  own: _own,
  leaving: _leaving,
  ...terms
} = workSchema.shape;

const forgettable = [
  'starts',
  'hoursADay',
  'fromH',
  'restDays',
  'ashore',
  'mastDown',
  'foul',
  'moves',
  'left',
  'light',
  'doneBy',
  'aisWanted',
] as const satisfies readonly (keyof typeof terms)[];

/**
 * Says when the work begins, how long a day is and what the calendar allows; what is left out stays, what is in `forget` is no
 * longer said. The first day of one phase leaves those of the others.
 */
export const setWork = defineEdit({
  id: 'set-work',
  params: z.strictObject({ ...terms, forget: z.exactOptional(z.array(z.enum(forgettable)).min(1)) }),
  title: ({ forget = [], ...wanted }) => {
    const facts = [...workInWords(wanted), ...forget.map((term) => `${termNames[term]} not said`)];
    return facts.length === 0 ? 'Leave the terms of the work.' : `Work: ${facts.join(', ')}.`;
  },
  change: (boat, { forget = [], starts, ...wanted }) =>
    changeWork(boat, (work) => {
      for (const term of forget) delete work[term];
      Object.assign(work, wanted);
      if (starts === undefined) return;
      const others = (work.starts ?? []).filter(({ phase }) => starts.every((one) => one.phase !== phase));
      work.starts = [...others, ...starts];
    }),
});
