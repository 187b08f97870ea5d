import type { Layout } from '../problem.ts';
import type { Ground } from './ground.ts';

/**
 * A trunk without its order: how often it runs through each way. One walk can pass through them all exactly when the used
 * ways hang together and at most two places have an odd number of ways at them: those are its ends.
 */
export interface Trunk {
  readonly times: Uint8Array;
  /** where a trunk of no length stands */
  readonly home: number;
}

/** What a trunk looks like: the places it passes (1 where it does), its odd places, whether one walk can run through it. */
export interface TrunkShape {
  readonly passes: Uint8Array;
  readonly odd: readonly number[];
  readonly walkable: boolean;
}

/** A trunk of no length. */
export const pointTrunk = (ground: Ground, home: number): Trunk => ({
  times: new Uint8Array(ground.ways.length),
  home,
});

/** A name for a trunk that tells it from every other. */
export const trunkKey = ({ times, home }: Trunk): string => (times.some((n) => n > 0) ? times.join('') : `at ${home}`);

/** The trunk that a walk runs through. */
export const trunkOfWalk = (
  ground: Ground,
  { places, ways }: { readonly places: readonly number[]; readonly ways: readonly number[] },
): Trunk => {
  const times = new Uint8Array(ground.ways.length);
  for (const way of ways) times[way] = (times[way] ?? 0) + 1;
  return { times, home: places[0] ?? 0 };
};

/** Whether a layout of the same grade has this trunk. */
export const isTrunkOf = ({
  ground,
  trunk,
  layout,
}: {
  readonly ground: Ground;
  readonly trunk: Trunk;
  readonly layout: Layout;
}): boolean => {
  if (layout.grade !== ground.grade.id) return false;
  const places = layout.walk.map(({ place }) => ground.problem.places.findIndex(({ id }) => id === place));
  const ways = layout.walk.flatMap(({ via }) =>
    via === undefined ? [] : [ground.ways.findIndex(({ id }) => id === via)],
  );
  return trunkKey(trunkOfWalk(ground, { places, ways })) === trunkKey(trunk);
};

/** The shape of a trunk; `walkable` also asks that its ends, or for a closed one some place, be where it may end. */
export const trunkShape = (ground: Ground, { times, home }: Trunk): TrunkShape => {
  const passes = new Uint8Array(ground.waysAt.length);
  const degree = new Uint8Array(ground.waysAt.length);
  let used = 0;
  let start = home;
  for (const [way, { a, b }] of ground.ways.entries()) {
    const n = times[way] ?? 0;
    if (n === 0) continue;
    used += 1;
    start = a;
    degree[a] = (degree[a] ?? 0) + n;
    degree[b] = (degree[b] ?? 0) + n;
  }
  const reached = floodFrom({ ground, times, start, passes });
  const odd: number[] = [];
  for (const [place, n] of degree.entries()) if (n % 2 === 1) odd.push(place);
  const mayEnd = (place: number): boolean => ground.problem.places[place]?.end === true;
  const ends = odd.length > 0 ? odd.every(mayEnd) : passes.some((passed, place) => passed === 1 && mayEnd(place));
  const holds = !ground.isHeld || ground.ways.every(({ least }, way) => (times[way] ?? 0) >= least);
  return { passes, odd, walkable: reached === used && odd.length <= 2 && ends && holds };
};

/** Marks every place that used ways join to `start`; gives how many used ways were met. */
const floodFrom = ({
  ground,
  times,
  start,
  passes,
}: {
  readonly ground: Ground;
  readonly times: Uint8Array;
  readonly start: number;
  readonly passes: Uint8Array;
}): number => {
  const waiting = [start];
  const met = new Uint8Array(ground.ways.length);
  let count = 0;
  passes[start] = 1;
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
    for (const way of ground.waysAt[place] ?? []) {
      const ends = ground.ways[way];
      if (ends === undefined || met[way] === 1 || (times[way] ?? 0) === 0) continue;
      met[way] = 1;
      count += 1;
      const next = ends.a === place ? ends.b : ends.a;
      if (passes[next] === 1) continue;
      passes[next] = 1;
      waiting.push(next);
    }
  }
  return count;
};

/** The part of a trunk that hangs together with a place; the rest is dropped. */
export const partWith = (ground: Ground, { times }: Trunk, place: number): Trunk => {
  const passes = new Uint8Array(ground.waysAt.length);
  floodFrom({ ground, times, start: place, passes });
  const kept = times.map((n, way) => (passes[ground.ways[way]?.a ?? place] === 1 ? n : 0));
  return { times: kept, home: place };
};
