import type { Ground } from './ground.ts';
import type { ServedGroup } from './sweep-field.ts';
import { sweepOrder } from './sweep-order.ts';

/** No rank: nothing better is to come. */
export const noRank = 255;

/** One step of the sweep: a way is decided, and the places all of whose ways are decided are forgotten. */
export interface SweepLayer {
  readonly way: number;
  readonly a: number;
  readonly b: number;
  readonly least: number;
  readonly most: number;
  /** places on the frontier before the way is decided, then those after */
  readonly before: readonly number[];
  readonly after: readonly number[];
  /** `before` with the ends of the way */
  readonly around: readonly number[];
  readonly forgotten: readonly number[];
  /** groups some place of which has come and some place of which may yet serve */
  readonly openBefore: readonly number[];
  readonly openAfter: readonly number[];
  /** all that are open before or after or come and go just now */
  readonly open: readonly number[];
  /** best rank of each group among places that are still to come */
  readonly rankToCome: Uint8Array;
  /** whether the trunk may be complete now: nobody, no spare and no trunk that lies already waits for a way to come */
  readonly mayClose: boolean;
}

/** The groups a place serves and the rank it has in each. */
export interface PlaceServes {
  readonly groups: readonly number[];
  readonly ranks: readonly number[];
}

/** What each place serves. */
export const placeServes = (ground: Ground, groups: readonly ServedGroup[]): readonly PlaceServes[] => {
  const serves = ground.waysAt.map(() => ({ groups: [] as number[], ranks: [] as number[] }));
  for (const [group, { places }] of groups.entries()) {
    for (const [rank, place] of places.entries()) {
      serves[place]?.groups.push(group);
      serves[place]?.ranks.push(rank);
    }
  }
  return serves;
};

/** The steps of a sweep, with everything about them that does not hang on the trunk. */
export const sweepLayers = (ground: Ground, groups: readonly ServedGroup[]): readonly SweepLayer[] => {
  const order = sweepOrder(ground.ways);
  const never = order.length;
  const comes = new Array<number>(ground.waysAt.length).fill(never);
  const goes = new Array<number>(ground.waysAt.length).fill(-1);
  for (const [at, way] of order.entries()) {
    for (const place of endsOf(ground, way)) {
      comes[place] = Math.min(comes[place] ?? never, at);
      goes[place] = at;
    }
  }
  const isOn = (place: number, at: number): boolean => (comes[place] ?? never) <= at && (goes[place] ?? -1) > at;
  const frontierAfter = (at: number): number[] => [...comes.keys()].filter((place) => isOn(place, at));
  // A group is open from when its first place comes until its last goes.
  const opens = groups.map(({ places }) => Math.min(...places.map((place) => comes[place] ?? never)));
  const shuts = groups.map(({ places }) => Math.max(...places.map((place) => goes[place] ?? -1)));
  const openAfter = (at: number): number[] =>
    [...groups.keys()].filter((group) => (opens[group] ?? never) <= at && (shuts[group] ?? -1) > at);
  return order.map((way, at) => {
    const [a, b] = endsOf(ground, way);
    const before = frontierAfter(at - 1);
    const isToCome = (place: number): boolean => (comes[place] ?? never) > at && (comes[place] ?? never) < never;
    const rankToCome = Uint8Array.from(groups, ({ places }) => {
      const rank = places.findIndex(isToCome);
      return rank === -1 ? noRank : rank;
    });
    const hasNotCome = (place: number): boolean => (comes[place] ?? never) > at;
    return {
      way,
      a,
      b,
      least: ground.ways[way]?.least ?? 0,
      most: ground.ways[way]?.most ?? 0,
      before,
      after: frontierAfter(at),
      around: [...new Set([...before, a, b])],
      forgotten: [a, b].filter((place) => goes[place] === at),
      openBefore: openAfter(at - 1),
      openAfter: openAfter(at),
      open: [...groups.keys()].filter((group) => (opens[group] ?? never) <= at && (shuts[group] ?? -1) >= at),
      rankToCome,
      mayClose:
        order.slice(at + 1).every((later) => ground.ways[later]?.least === 0) &&
        !ground.spares.some(({ place }) => hasNotCome(place)) &&
        !groups.some(({ places }) => places.every(hasNotCome)),
    };
  });
};

const endsOf = (ground: Ground, way: number): readonly [number, number] => {
  const { a, b } = ground.ways[way] ?? { a: 0, b: 0 };
  return [a, b];
};
