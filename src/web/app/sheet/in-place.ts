import type { Drawing, PathShape } from '../../../papers/drawing/shapes.ts';

/** A drawing that stands in place of the boat. */
export interface InPlace {
  readonly drawing: Drawing;
  /** the few lines by which it is known when it is drawn very small */
  readonly overview: readonly PathShape[];
  /** what it shows, for those who hear it */
  readonly says: string;
  /** whether it is printed on pages of its own, and so not where it stands */
  readonly isOnPages: boolean;
}

/** The thick lines of a drawing, by which it is known when it is drawn very small. */
export const thickLines = (shapes: Drawing['shapes'], leastMm: number): PathShape[] =>
  shapes.flatMap((shape) => {
    if (shape.kind === 'group') return thickLines(shape.shapes, leastMm);
    return shape.kind === 'path' && (shape.stroke?.widthMm ?? 0) >= leastMm ? [shape] : [];
  });
