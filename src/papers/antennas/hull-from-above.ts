import type { Boat } from '../../core/boat/boat-schema.ts';

/** A boat without an outline: her beam at the widest, a square stern and a bow that comes to a point, as shares of length and half beam. */
const plain = [
  [0, 0.8],
  [0.35, 1],
  [0.65, 0.92],
  [0.88, 0.45],
  [1, 0],
] as const;

/** The outline of a boat from above, in metres forward and to starboard of a spot. */
export const hullFromAbove = (
  { outline, lengthM, beamM }: Boat['hull'],
  at: { readonly xM: number; readonly yM: number },
): [xM: number, yM: number][] => {
  const starboard = plain.map(([along, across]): [number, number] => [along * lengthM, (across * beamM) / 2]);
  const port = starboard.map(([xM, yM]): [number, number] => [xM, -yM]).reverse();
  const points = outline?.top ?? [...starboard, ...port.slice(1)];
  return points.map(([xM, yM]) => [xM - at.xM, yM - at.yM]);
};
