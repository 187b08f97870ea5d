import type { GroundWay } from './ground.ts';

/** Widest frontier a start may lead to and still be weighed; beyond it every start is as bad. */
const widestFrontier = 40;

/**
 * The order in which a sweep takes the ways, so that few places lie at a time between ways taken and ways to come: from
 * every start the next way is the one that leaves the frontier narrowest, and the start with the least work wins.
 */
export const sweepOrder = (ways: readonly GroundWay[]): readonly number[] => {
  let best: { order: readonly number[]; work: number } | undefined;
  for (const start of ways.keys()) {
    const found = orderFrom(ways, start, best?.work ?? Number.POSITIVE_INFINITY);
    if (found !== undefined) best = found;
  }
  return best?.order ?? [];
};

/** The order from a start; nothing when it makes no less work than `most`. */
const orderFrom = (
  ways: readonly GroundWay[],
  start: number,
  most: number,
): { order: readonly number[]; work: number } | undefined => {
  const left = new Set(ways.keys());
  const waysLeft = new Map<number, number>();
  for (const { a, b } of ways) {
    waysLeft.set(a, (waysLeft.get(a) ?? 0) + 1);
    waysLeft.set(b, (waysLeft.get(b) ?? 0) + 1);
  }
  // places on the frontier, and when they came
  const frontier = new Map<number, number>();
  const order: number[] = [];
  let work = 0;
  for (let next: number | undefined = start; next !== undefined; next = nextWay({ ways, left, waysLeft, frontier })) {
    const way = ways[next];
    if (way === undefined) break;
    left.delete(next);
    order.push(next);
    for (const place of [way.a, way.b]) {
      const more = (waysLeft.get(place) ?? 1) - 1;
      waysLeft.set(place, more);
      if (!frontier.has(place)) frontier.set(place, order.length);
      if (more === 0) frontier.delete(place);
    }
    work += 4 ** Math.min(frontier.size, widestFrontier);
    if (work >= most) return undefined;
  }
  return { order, work };
};

const nextWay = ({
  ways,
  left,
  waysLeft,
  frontier,
}: {
  readonly ways: readonly GroundWay[];
  readonly left: ReadonlySet<number>;
  readonly waysLeft: ReadonlyMap<number, number>;
  readonly frontier: ReadonlyMap<number, number>;
}): number | undefined => {
  let best: { way: number; grows: number; since: number } | undefined;
  for (const way of left) {
    const { a, b } = ways[way] ?? { a: 0, b: 0 };
    const met = frontier.has(a) || frontier.has(b);
    let grows = met || frontier.size === 0 ? 0 : 10;
    for (const place of [a, b]) {
      if (!frontier.has(place)) grows += 1;
      if (waysLeft.get(place) === 1) grows -= 1;
    }
    const since = Math.min(frontier.get(a) ?? left.size + 1e6, frontier.get(b) ?? left.size + 1e6);
    if (best === undefined || grows < best.grows || (grows === best.grows && since < best.since)) {
      best = { way, grows, since };
    }
  }
  return best?.way;
};
