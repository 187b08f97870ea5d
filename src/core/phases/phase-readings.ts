import type { PhaseEntry } from '../phases-shape.ts';
import type { SeenEntry } from '../plan-shape.ts';
import { type Arrival, arrivals, needKey } from '../readings/arrivals.ts';
import { withSeenBefore } from '../readings/before-and-after.ts';
import type { Refit } from '../readings/refit.ts';

/** Needs of one phase, at units that are aboard then. */
export interface PhaseReadings {
  readonly phase: number;
  readonly needs: readonly Arrival[];
}

/** What arrives in each phase, at units that are aboard then. */
export const readingsByPhase = (refit: Refit, phases: readonly number[]): PhaseReadings[] =>
  phases.map((phase) => ({ phase, needs: arrivals(refit, phase) }));

const bare = ({ reading, instance, at, must }: Arrival) => ({
  reading,
  ...(instance === undefined ? {} : { instance }),
  at,
  must,
});

/** What arrives in one phase and what does not, with the first later phase that brings it. */
export const phaseReadings = (
  { phase, needs }: PhaseReadings,
  all: readonly PhaseReadings[],
  before: readonly SeenEntry[],
): Pick<PhaseEntry, 'arrives' | 'missing'> => {
  const firstFrom = (key: string): number | undefined =>
    all.find((later) => later.phase > phase && later.needs.some((need) => need.arrives && needKey(need) === key))
      ?.phase;
  return {
    arrives: needs.filter(({ arrives }) => arrives).map(bare),
    missing: withSeenBefore(
      needs.filter(({ arrives }) => !arrives),
      before,
    ).map((need) => {
      const from = firstFrom(needKey(need));
      return { ...bare(need), seenBefore: need.seenBefore, ...(from === undefined ? {} : { from }) };
    }),
  };
};
