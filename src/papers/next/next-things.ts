import { kit, mended, missing, needs, places, unfed, wiring } from './first-things.ts';
import { doubts, hasBegun, jobs, order, papers, sheets, start, tape, tests } from './later-things.ts';
import type { Look, NextAsked, NextThing } from './next-thing.ts';

/** What makes a first plan, and what makes it sure, in the order of the job. A danger comes before anything that is done aboard. */
const looks: readonly Look[] = [
  places,
  kit,
  mended('danger', 'Nobody works on a boat while one is open.'),
  needs,
  wiring,
  mended('fault', 'As it stands she would not work, or not within a published limit.'),
  missing,
  unfed,
  tape,
  doubts,
  sheets,
  order,
  start,
  jobs,
  tests,
  papers,
];

/** Once the first job is ticked, a test that came out wrong and the next job come before what is left to order. */
const looksOnceBegun: readonly Look[] = [...looks.filter((look) => look !== order), order];

/** Everything that is to be done at a boat, the next sensible thing first. */
export const nextThings = (asked: NextAsked): readonly NextThing[] =>
  (hasBegun(asked) ? looksOnceBegun : looks).flatMap((look) => {
    const thing = look(asked);
    return thing === undefined ? [] : [thing];
  });
