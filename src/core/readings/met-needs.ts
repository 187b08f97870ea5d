import type { Need } from '../boat/boat-schema.ts';
import type { Reaches } from './reaches.ts';
import { type WayIn, waysInto } from './ways-in.ts';

/** A need that is met, with what is known of the reading as it comes in. */
export interface MetNeed {
  readonly need: Need;
  /** every way that meets it, shortest first; never empty */
  readonly ways: readonly [WayIn, ...WayIn[]];
  /** whether the screen has variation, and so can turn a magnetic heading into a true one */
  readonly hasVariation: boolean;
}

/** The needs for some readings that are met in the phase of `reaches`. Pure. */
export const metNeeds = (reaches: Reaches, isAsked: (need: Need) => boolean): MetNeed[] =>
  reaches.network.index.boat.needs
    .filter((need) => reaches.network.nodesOf.has(need.at) && isAsked(need))
    .flatMap((need) => {
      const [first, ...others] = waysInto(reaches, need);
      if (first === undefined) return [];
      return [{ need, ways: [first, ...others] as const, hasVariation: reaches.has(need.at, 'variation') }];
    });
