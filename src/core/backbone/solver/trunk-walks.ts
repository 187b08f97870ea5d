import type { Ground } from './ground.ts';
import type { Trunk, TrunkShape } from './trunk.ts';

/** A trunk in the order in which it is laid: places passed, and the ways between them (one fewer). */
export interface TrunkWalk {
  readonly places: readonly number[];
  readonly ways: readonly number[];
}

/**
 * The walks that run through a trunk, each way as often as the trunk does: from the first of its two ends, or of a closed
 * trunk from every place where it may end. Lowest way first at every fork, so the order is always the same.
 */
export function* trunkWalks({
  ground,
  trunk,
  shape,
}: {
  readonly ground: Ground;
  readonly trunk: Trunk;
  readonly shape: TrunkShape;
}): Generator<TrunkWalk> {
  const first = shape.odd[0];
  const mayStart = (place: number): boolean => shape.passes[place] === 1 && ground.problem.places[place]?.end === true;
  const starts = first === undefined ? [...ground.waysAt.keys()].filter(mayStart) : [first];
  for (const start of starts) {
    yield* walksOn({ ground, left: Uint8Array.from(trunk.times), places: [start], ways: [] });
  }
}

interface Unfinished extends TrunkWalk {
  readonly ground: Ground;
  /** how often each way must still be walked */
  readonly left: Uint8Array;
}

function* walksOn({ ground, left, places, ways }: Unfinished): Generator<TrunkWalk> {
  const here = places.at(-1) ?? 0;
  let finished = true;
  for (const way of ground.waysAt[here] ?? []) {
    const ends = ground.ways[way];
    if (ends === undefined || (left[way] ?? 0) === 0) continue;
    finished = false;
    const next = ends.a === here ? ends.b : ends.a;
    const then = left.with(way, (left[way] ?? 0) - 1);
    // Without this look ahead the walk would strand itself and have to turn back, on some boats for ever.
    if (!allMetFrom({ ground, left: then, from: next })) continue;
    yield* walksOn({ ground, left: then, places: [...places, next], ways: [...ways, way] });
  }
  if (finished) yield { places, ways };
}

const allMetFrom = ({
  ground,
  left,
  from,
}: {
  readonly ground: Ground;
  readonly left: Uint8Array;
  readonly from: number;
}): boolean => {
  const met = new Uint8Array(left.length);
  const seen = new Set([from]);
  for (const place of seen) {
    for (const way of ground.waysAt[place] ?? []) {
      const ends = ground.ways[way];
      if (ends === undefined || (left[way] ?? 0) === 0) continue;
      met[way] = 1;
      seen.add(ends.a).add(ends.b);
    }
  }
  return left.every((n, way) => n === 0 || met[way] === 1);
};
