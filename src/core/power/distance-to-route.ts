/** A point aboard, metres. */
export interface Spot {
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
}

const apartM = (a: Spot, b: Spot): number => Math.hypot(a.xM - b.xM, a.yM - b.yM, a.zM - b.zM);

const toSegmentM = (from: Spot, a: Spot, b: Spot): number => {
  const along = { xM: b.xM - a.xM, yM: b.yM - a.yM, zM: b.zM - a.zM };
  const lengthM2 = along.xM ** 2 + along.yM ** 2 + along.zM ** 2;
  if (lengthM2 === 0) return apartM(from, a);
  const dot = (from.xM - a.xM) * along.xM + (from.yM - a.yM) * along.yM + (from.zM - a.zM) * along.zM;
  const share = Math.min(1, Math.max(0, dot / lengthM2));
  return apartM(from, { xM: a.xM + share * along.xM, yM: a.yM + share * along.yM, zM: a.zM + share * along.zM });
};

/**
 * Shortest distance from a point to a route of straight stretches, m; endless where the route has no place.
 *
 * @example distanceToRoute(compass, [panel, helm]) // 0.42
 */
export const distanceToRoute = (from: Spot, route: readonly Spot[]): number => {
  const [first] = route;
  if (first === undefined) return Number.POSITIVE_INFINITY;
  return Math.min(apartM(from, first), ...route.slice(1).map((next, at) => toSegmentM(from, route[at] ?? first, next)));
};
