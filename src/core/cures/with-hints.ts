import type { Cure, ReadingEntry, StandingJoin } from '../plan-shape.ts';
import type { Arrival } from '../readings/arrivals.ts';
import type { Refit } from '../readings/refit.ts';

/** What cures are looked for in: the readings of one boat in one phase, and the joins that stand in it. */
export interface CureTask {
  readonly refit: Refit;
  readonly phase: number;
  readonly joins: readonly StandingJoin[];
  readonly readings: readonly Arrival[];
}

/** What a person could look at, where no cure was tried. */
export const hintsOf = ({ whyNot }: Arrival): Cure[] => (whyNot?.cures ?? []).map((says) => ({ says, edits: [] }));

/** The readings of a plan, each gap with the given cures. */
export const withCuresOf = (readings: readonly Arrival[], curesOf: (missing: Arrival) => Cure[]): ReadingEntry[] =>
  readings.map((entry) => {
    const { whyNot, ...rest } = entry;
    if (whyNot === undefined) return rest;
    return { ...rest, whyNot: { link: whyNot.link, says: whyNot.says, cures: curesOf(entry) } };
  });

/** The readings of a plan without a search for cures, for a first picture: it brings no library of sheets with it. */
export const withHints = ({ readings }: CureTask): ReadingEntry[] => withCuresOf(readings, hintsOf);
