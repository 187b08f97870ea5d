import type { Box } from './box.ts';
import type { Point } from './point.ts';

/** A straight piece from one point to another. */
export type Piece = readonly [from: Point, to: Point];

/** On which side of the line through p and q a point lies: positive, negative, or on it. */
const side = (p: Point, q: Point, r: Point): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);

/** Whether two pieces cross each other; pieces that only touch do not. */
export const crosses = ([a, b]: Piece, [c, d]: Piece): boolean => {
  // most lie far apart: say so before anything is multiplied
  if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0])) return false;
  if (Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1])) return false;
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
};

/** The upright box around a piece. */
export const pieceBox = (from: Point, to: Point): Box => ({
  leftMm: Math.min(from[0], to[0]),
  rightMm: Math.max(from[0], to[0]),
  topMm: Math.min(from[1], to[1]),
  bottomMm: Math.max(from[1], to[1]),
});

/** The square around a point that reaches so far to each side. */
export const around = (point: Point, byMm: number): Box => ({
  leftMm: point[0] - byMm,
  rightMm: point[0] + byMm,
  topMm: point[1] - byMm,
  bottomMm: point[1] + byMm,
});
