import { fewInWords } from '../../core/boat/edits/few-in-words.ts';
import type { Stuck } from '../../core/work-shape.ts';
import { printCount } from '../lists/print-figure.ts';
import { functionWords } from './function-words.ts';
import { jobWords } from './job-words.ts';
import type { PictureInput } from './picture-input.ts';
import { itemName } from './work-names.ts';

const whyWords: Readonly<Record<Stuck['why'], string>> = {
  circle: 'Some jobs wait for each other in a circle',
  'nobody-can': 'There is nobody who may do it',
  'never-ashore': 'It is done ashore, and she is never out of the water',
  'never-afloat': 'It is done afloat, and she is never in the water',
  'mast-never-down': 'It wants the mast down, and it stands on all days',
  'mast-never-up': 'It wants the mast up, and it is down on all days',
  'comes-too-late': 'What it hangs on comes too late',
  'dark-though-never': 'It would put out what may never be dark',
  'pins-clash': 'Jobs are held to days that do not go together',
  'done-by-too-early': 'It cannot all be done by the day set',
  'no-daylight': 'It is done outside, and no day has light enough for it',
  'too-few-days': 'There are too few days',
};

type Known = Pick<PictureInput, 'names' | 'phases'>;

const nameOf = ({ names, phases }: Known, id: string): string => {
  const job = phases.flatMap(({ jobs }) => jobs).find((one) => one.id === id);
  if (job !== undefined) return `“${jobWords(names, job)}”`;
  return itemName(names, id);
};

/** Why there is no order, in a sentence, with the jobs it is about. */
export const stuckSays = (known: Known, { why, jobs, functions }: Stuck): string => {
  const about = [...jobs.map((id) => nameOf(known, id)), ...functions.map((id) => functionWords[id])];
  return `${whyWords[why]}${about.length === 0 ? '' : `: ${fewInWords(about)}`}.`;
};

/** One thing that would have to give, as it is offered. */
export const relaxSays = (known: Known, { what, about, days = 1 }: Stuck['relax'][number]): string => {
  const things = fewInWords(about.map((id) => nameOf(known, id)));
  const count = printCount(days, 'day');
  switch (what) {
    case 'days':
      return `${count} more before she must be done`;
    case 'haul-out-days':
      return `${count} more ashore`;
    case 'mast-days':
      return `${count} more with the mast down`;
    case 'hand':
      return `somebody who may do ${things}`;
    case 'unpin':
      return `let go of the day of ${things}`;
    case 'temporary-feed':
      return 'a temporary feed, so that it stays lit';
    case 'earlier':
      return `${things} ${count} earlier`;
    case 'leave-out':
      return `leave out ${things}`;
  }
};
