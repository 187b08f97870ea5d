import type { MmShape } from '../../core/fits-shape.ts';
import type { PathStep } from '../drawing/path-data.ts';
import { polygon } from '../drawing/polyline.ts';

/** How far the handles of a cubic curve reach for a quarter of a circle of radius 1: it lies within 0.03 % of it. */
const handle = 0.5522847498;

/** Where a point of a template comes to lie on a drawing, whose y points down. */
export type OnDrawing = (xMm: number, yMm: number) => readonly [number, number];

/** A quarter turn from one point to the next round a corner. */
const quarter = (
  from: readonly [number, number],
  corner: readonly [number, number],
  to: readonly [number, number],
): PathStep => {
  const near = (end: readonly [number, number], axis: 0 | 1): number => end[axis] + handle * (corner[axis] - end[axis]);
  return ['C', near(from, 0), near(from, 1), near(to, 0), near(to, 1), to[0], to[1]];
};

/** A rectangle with rounded corners; one that is all corner is round. */
const rounded = ({ xMm, yMm, widthMm, heightMm }: MmShape, radiusMm: number, on: OnDrawing): PathStep[] => {
  const [left, right] = [xMm - widthMm / 2, xMm + widthMm / 2];
  const [below, above] = [yMm - heightMm / 2, yMm + heightMm / 2];
  const r = radiusMm;
  const start = on(left + r, above);
  const turns = [
    [on(right - r, above), on(right, above), on(right, above - r)],
    [on(right, below + r), on(right, below), on(right - r, below)],
    [on(left + r, below), on(left, below), on(left, below + r)],
    [on(left, above - r), on(left, above), on(left + r, above)],
  ] as const;
  return [
    ['M', start[0], start[1]],
    ...turns.flatMap(([from, corner, to]): PathStep[] => [['L', from[0], from[1]], quarter(from, corner, to)]),
    ['Z'],
  ];
};

/** The outline of a shape as a path of a drawing. */
export const outlinePath = (shape: MmShape, on: OnDrawing): PathStep[] => {
  const { outlineMm, xMm, yMm, widthMm, cornerMm = 0 } = shape;
  if (outlineMm !== undefined) return polygon(outlineMm.map(([x, y]) => on(xMm + x, yMm + y)));
  if (shape.shape === 'round') return rounded(shape, widthMm / 2, on);
  if (cornerMm > 0) return rounded(shape, cornerMm, on);
  const [right, above] = [widthMm / 2, shape.heightMm / 2];
  return polygon([
    on(xMm - right, yMm + above),
    on(xMm + right, yMm + above),
    on(xMm + right, yMm - above),
    on(xMm - right, yMm - above),
  ]);
};
