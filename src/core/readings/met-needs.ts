import type { BoatIndex } from '../boat/boat-index.ts';
import type { Need } from '../boat/boat-schema.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { portNetworkOf } from './port-network.ts';
import { reachesOf } from './reaches.ts';
import { type WayIn, waysInto } from './ways-in.ts';

/** A need that is met, with what is known of the reading as it comes in. */
export interface MetNeed {
  readonly need: Need;
  /** every way that meets it, shortest first; never empty */
  readonly ways: readonly [WayIn, ...WayIn[]];
  /** whether the screen has variation, and so can turn a magnetic heading into a true one */
  readonly hasVariation: boolean;
}

/** The needs for some readings that are met in a phase. `joins` are those that stand in that phase. Pure. */
export const metNeeds = (
  index: BoatIndex,
  phase: number,
  joins: readonly StandingJoin[],
  isAsked: (need: Need) => boolean,
): MetNeed[] => {
  const network = portNetworkOf(index, phase, joins);
  const reaches = reachesOf(network);
  return index.boat.needs
    .filter((need) => network.nodesOf.has(need.at) && isAsked(need))
    .flatMap((need) => {
      const [first, ...others] = waysInto(reaches, need);
      if (first === undefined) return [];
      return [{ need, ways: [first, ...others] as const, hasVariation: reaches.has(need.at, 'variation') }];
    });
};
