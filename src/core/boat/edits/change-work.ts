import type { Draft } from 'mutative';
import type { Boat } from '../boat-schema.ts';
import type { Work } from '../work.ts';

/** Changes what was settled of the work, begun where there is none; a list that is left empty, or nothing at all, goes out of the file. */
export const changeWork = (boat: Draft<Boat>, change: (work: Draft<Work>) => void): void => {
  boat.work ??= {};
  const { work } = boat;
  change(work);
  for (const list of ['starts', 'restDays', 'hands', 'essentials', 'jobs', 'own', 'leaving'] as const) {
    if (work[list]?.length === 0) delete work[list];
  }
  for (const spans of ['ashore', 'mastDown', 'foul', 'moves', 'left'] as const) {
    if (work[spans]?.length === 0) delete work[spans];
  }
  if (Object.keys(work).length === 0) delete boat.work;
};
