import type { MmShape } from '../../fits-shape.ts';
import type { Point } from './point.ts';
import { shapePoints } from './shape-points.ts';

const toRectangle = ({ widthMm, heightMm, cornerMm = 0 }: MmShape, [x, y]: Point): number => {
  const beyondX = Math.abs(x) - widthMm / 2 + cornerMm;
  const beyondY = Math.abs(y) - heightMm / 2 + cornerMm;
  const outside = Math.hypot(Math.max(beyondX, 0), Math.max(beyondY, 0));
  return outside + Math.min(Math.max(beyondX, beyondY), 0) - cornerMm;
};

const toPiece = ([x, y]: Point, [aX, aY]: Point, [bX, bY]: Point): number => {
  const [alongX, alongY] = [bX - aX, bY - aY];
  const lengthSquared = alongX ** 2 + alongY ** 2;
  const at = lengthSquared === 0 ? 0 : ((x - aX) * alongX + (y - aY) * alongY) / lengthSquared;
  const held = Math.min(1, Math.max(0, at));
  return Math.hypot(x - aX - held * alongX, y - aY - held * alongY);
};

/** Whether a line from the point to the right crosses the piece: an odd number of crossings means inside. */
const crosses = ([x, y]: Point, [aX, aY]: Point, [bX, bY]: Point): boolean =>
  aY > y !== bY > y && x < aX + ((y - aY) * (bX - aX)) / (bY - aY);

const toOutline = (points: readonly Point[], point: Point): number => {
  let nearest = Number.POSITIVE_INFINITY;
  let inside = false;
  points.forEach((a, at) => {
    const b = points[(at + 1) % points.length] ?? a;
    nearest = Math.min(nearest, toPiece(point, a, b));
    if (crosses(point, a, b)) inside = !inside;
  });
  return inside ? -nearest : nearest;
};

/** How far a point lies from the edge of a shape, mm; below nothing inside it. */
export const edgeDistanceMm = (shape: MmShape, [x, y]: Point): number => {
  const own: Point = [x - shape.xMm, y - shape.yMm];
  if (shape.shape === 'round') return Math.hypot(own[0], own[1]) - shape.widthMm / 2;
  if (shape.shape === 'rectangle') return toRectangle(shape, own);
  return toOutline(shapePoints(shape), [x, y]);
};
