import type { Shape } from '../../papers/drawing/shapes.ts';

/** Height of the smallest words among shapes, in millimetres; infinite where there are none. */
export const smallestTextMm = (shapes: readonly Shape[]): number =>
  shapes.reduce((least, shape) => {
    if (shape.kind === 'text') return Math.min(least, shape.sizeMm);
    return shape.kind === 'group' ? Math.min(least, smallestTextMm(shape.shapes)) : least;
  }, Number.POSITIVE_INFINITY);
