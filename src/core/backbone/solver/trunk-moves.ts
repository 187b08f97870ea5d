import type { Ground } from './ground.ts';
import { partWith, pointTrunk, type Trunk, type TrunkShape, trunkShape } from './trunk.ts';
import type { TrunkPaths } from './trunk-paths.ts';

/** What moves need to know of a boat, found once. */
export interface MoveGuide {
  readonly ground: Ground;
  readonly paths: TrunkPaths;
  readonly rings: readonly (readonly number[])[];
  /** places worth going to: those with tees, and those where a trunk may have to end */
  readonly targets: readonly number[];
}

/** Places worth going to: with tees, or on a way that is left after blind ends are taken off. */
export const trunkTargets = (ground: Ground): readonly number[] =>
  [...ground.waysAt.keys()].filter(
    (place) => ground.problem.places[place]?.tees === true || (ground.waysAt[place] ?? []).length > 0,
  );

/**
 * The trunks one move away: one way used more or less often; an end led on or back to another place; a branch run out and
 * back; a ring gone round the other way. A part that a move cuts off is dropped. Some of them may not be walkable.
 */
export function* trunkMoves({
  guide,
  trunk,
  shape,
}: {
  readonly guide: MoveGuide;
  readonly trunk: Trunk;
  readonly shape: TrunkShape;
}): Generator<Trunk> {
  const { ground } = guide;
  for (const [way, { a, b, most }] of ground.ways.entries()) {
    const touches = shape.passes[a] === 1 || shape.passes[b] === 1;
    for (let n = 0; touches && n <= most; n += 1) {
      if (n !== trunk.times[way]) yield* wholeParts({ ground, times: trunk.times.with(way, n), near: [a, b] });
    }
  }
  for (const path of endPaths({ guide, shape })) yield* turned({ ground, trunk, path });
  for (const path of guide.rings) yield* turned({ ground, trunk, path });
  for (const place of guide.targets) {
    if (shape.passes[place] === 1) continue;
    const branch = nearestBranch({ guide, shape, place });
    const fits = branch?.every((way) => trunk.times[way] === 0 && ground.ways[way]?.most === 2);
    if (branch === undefined || fits !== true) continue;
    yield { times: trunk.times.map((n, way) => (branch.includes(way) ? 2 : n)), home: trunk.home };
  }
}

/** Paths along which the trunk may be turned: from either end, or from any place of a closed one, to any target. */
function* endPaths({
  guide,
  shape,
}: {
  readonly guide: MoveGuide;
  readonly shape: TrunkShape;
}): Generator<readonly number[]> {
  const places = [...shape.passes.keys()].filter((place) => shape.passes[place] === 1);
  for (const from of shape.odd.length > 0 ? shape.odd : places) {
    for (const to of guide.targets) {
      const path = from === to ? undefined : guide.paths({ from, to });
      if (path !== undefined) yield path;
    }
  }
}

/** Both ways to change the parity of every way on a path: where the trunk ran once it is taken out, or run back as well. */
function* turned({
  ground,
  trunk,
  path,
}: {
  readonly ground: Ground;
  readonly trunk: Trunk;
  readonly path: readonly number[];
}): Generator<Trunk> {
  const onPath = new Set(path);
  const near = path.flatMap((way) => [ground.ways[way]?.a ?? 0, ground.ways[way]?.b ?? 0]);
  const turn = (once: 0 | 2): Uint8Array =>
    trunk.times.map((n, way) => {
      if (!onPath.has(way)) return n;
      return n === 1 ? (ground.ways[way]?.most === 2 ? once : 0) : 1;
    });
  yield* wholeParts({ ground, times: turn(0), near });
  if (path.some((way) => trunk.times[way] === 1)) yield* wholeParts({ ground, times: turn(2), near });
}

/** A trunk as it is when it hangs together; else its part with the ends, or of a closed one each part near the change. */
function* wholeParts({
  ground,
  times,
  near,
}: {
  readonly ground: Ground;
  readonly times: Uint8Array;
  readonly near: readonly number[];
}): Generator<Trunk> {
  if (!times.some((n) => n > 0)) {
    for (const place of new Set(near)) yield pointTrunk(ground, place);
    return;
  }
  const whole = { times, home: near[0] ?? 0 };
  const { odd } = trunkShape(ground, whole);
  if (odd.length > 2) return;
  for (const place of new Set(odd.length > 0 ? odd.slice(0, 1) : near)) yield partWith(ground, whole, place);
}

const nearestBranch = ({
  guide,
  shape,
  place,
}: {
  readonly guide: MoveGuide;
  readonly shape: TrunkShape;
  readonly place: number;
}): readonly number[] | undefined => {
  let best: { path: readonly number[]; cost: number } | undefined;
  for (const [from, passed] of shape.passes.entries()) {
    const path = passed === 1 ? guide.paths({ from, to: place }) : undefined;
    if (path === undefined) continue;
    const cost = path.reduce((sum, way) => sum + (guide.ground.ways[way]?.cost ?? 0), 0);
    if (best === undefined || cost < best.cost) best = { path, cost };
  }
  return best?.path;
};
