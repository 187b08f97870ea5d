import { fuseMargin } from '../../facts/fuses.ts';
import { within } from '../../power/within.ts';
import type { LoadEntry } from '../../power-shape.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { circuitSums } from './circuit-sums.ts';
import { amps, circuitName } from './feed-words.ts';

const statedFor = (loads: readonly LoadEntry[], port: string | undefined): number | undefined =>
  loads.find((load) => load.port === port)?.fuseA;

/** A quarter above the steady current keeps a fuse cool; what a maker states for his own unit holds where it is less. */
export const littleInHand: Rule = {
  id: 'power/little-in-hand',
  level: 'advice',
  title: 'A fuse or breaker has little in hand above what hangs on it.',
  sources: ['practice-fuse-size'],
  check: ({ index, plan }) => {
    const near = circuitSums(plan.feeds).filter(({ ratingA, loadA, feeds }) => {
      // What the cable of a bus bears decides its fuse.
      const isBus = feeds.some(({ to }) => index.buses.has(to));
      const stated = feeds.length === 1 && statedFor(plan.loads, feeds[0]?.to) === ratingA;
      return !isBus && !stated && loadA <= ratingA && !within({ value: loadA * fuseMargin.value, limit: ratingA });
    });
    const [first] = near;
    if (first === undefined) return [];
    const told = near.map((sum) => `${circuitName(index, sum)} (${amps(sum.loadA)} on ${amps(sum.ratingA)})`);
    return [
      {
        about: near.map(({ circuit }) => circuit),
        says: `${told.join(', ')} ${near.length === 1 ? 'has' : 'have'} less than a quarter in hand with everything drawing at the lowest volts.`,
        measured: { value: first.ratingA / first.loadA, unit: fuseMargin.unit },
        limit: figurePart(fuseMargin),
        cure: 'Fit the next rating where the wire carries it, or share the loads out.',
      },
    ];
  },
};
