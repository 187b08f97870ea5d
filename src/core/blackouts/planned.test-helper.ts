import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { canonicalBoat } from '../boat/canonical-boat.ts';
import { lastPhase } from '../boat/phase.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { planWith, withoutLateParts } from '../plan-with.ts';
import { refitOf } from '../readings/refit.ts';
import { waysInto } from '../readings/ways-in.ts';
import type { LaidBoat } from './blackout-table.ts';
import type { Asks } from './plain-failures.test-helper.ts';

/** A boat laid out the quick way, ready to be asked what fails. */
export const planned = (given: Boat) => {
  const boat = canonicalBoat(given);
  const index = indexBoat(boat);
  const phase = lastPhase(boat);
  const joinsAt = (at: number) => joinsOf(index, at);
  const { lines, joins, buses } = planWith(withoutLateParts)(boat, new Map());
  const laid: LaidBoat = { index, lines, joins, buses, joinsAt };
  return { boat, phase, laid: { ...laid, buses }, reaches: refitOf(index, joinsAt).reachesIn(phase) };
};

/** Whether a need is met, by following the readings of the boat anew. */
export const followedAnew = (phase: number): Asks => {
  let last: Boat | undefined;
  let reaches: ReturnType<typeof planned>['reaches'] | undefined;
  return (boat, need) => {
    if (boat !== last || reaches === undefined) {
      const index = indexBoat(boat);
      reaches = refitOf(index, (at) => joinsOf(index, at)).reachesIn(phase);
      last = boat;
    }
    return reaches.network.nodesOf.has(need.at) && waysInto(reaches, need).length > 0;
  };
};
