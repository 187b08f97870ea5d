import type { MmShape } from '../../fits-shape.ts';
import type { Point } from './point.ts';

/** The same shape set off by so much. */
export const shapeAt = (shape: MmShape, [x, y]: Point): MmShape => ({
  ...shape,
  xMm: shape.xMm + x,
  yMm: shape.yMm + y,
});
