import { type Box, overlaps } from '../drawing/box.ts';
import { flattenPath } from '../drawing/flatten-path.ts';
import type { Point } from '../drawing/point.ts';
import { readPath } from '../drawing/read-path.ts';
import type { CircleShape, GroupShape, PathShape, Shape } from '../drawing/shapes.ts';

/** Every shape of a drawing that is no group. */
export const leavesOf = (shapes: readonly Shape[]): Exclude<Shape, { kind: 'group' }>[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? leavesOf(shape.shapes) : [shape]));

/** Balloons as a person reaches them by keyboard: one number, or the numbers of a place together. */
export const focusableOf = (shapes: readonly Shape[]): GroupShape[] =>
  shapes.flatMap((shape) => {
    if (shape.kind !== 'group') return [];
    return shape.focusable === true ? [shape] : focusableOf(shape.shapes);
  });

/** Circles that are balloons: larger than a dot, and filled. */
export const balloonsOf = (shapes: readonly Shape[]): CircleShape[] =>
  leavesOf(shapes).flatMap((shape) =>
    shape.kind === 'circle' && shape.radiusMm > 2 && shape.fill !== undefined ? [shape] : [],
  );

export const circleBox = ({ xMm, yMm, radiusMm }: CircleShape): Box => ({
  leftMm: xMm - radiusMm,
  rightMm: xMm + radiusMm,
  topMm: yMm - radiusMm,
  bottomMm: yMm + radiusMm,
});

/** Every two things whose boxes share a spot, by name. */
export const clashes = <Thing>(
  things: readonly Thing[],
  boxOf: (thing: Thing) => Box,
  name: (thing: Thing) => string,
): string[] => {
  const boxed = things.map((thing) => ({ thing, box: boxOf(thing) }));
  return boxed.flatMap((one, at) =>
    boxed
      .slice(at + 1)
      .filter((other) => overlaps(one.box, other.box))
      .map((other) => `${name(one.thing)} / ${name(other.thing)}`),
  );
};

/** The straight pieces of a path, read back from what would be written to the file. */
export const piecesOf = (path: PathShape): (readonly [Point, Point])[] => flattenPath(readPath(path.d));

/** Distance of a point from a straight piece. */
export const awayMm = ([xMm, yMm]: Point, [from, to]: readonly [Point, Point]): number => {
  const run = [to[0] - from[0], to[1] - from[1]] as const;
  const square = run[0] ** 2 + run[1] ** 2;
  const share =
    square === 0 ? 0 : Math.min(1, Math.max(0, ((xMm - from[0]) * run[0] + (yMm - from[1]) * run[1]) / square));
  return Math.hypot(xMm - from[0] - share * run[0], yMm - from[1] - share * run[1]);
};
