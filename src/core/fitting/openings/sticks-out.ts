import type { MmShape } from '../../fits-shape.ts';
import { edgeDistanceMm } from './edge-distance.ts';
import type { Point } from './point.ts';

/** Touching counts as inside; so much less than a hair is touching. */
export const touchingMm = 1e-6;

/** How far the points of an outline reach out of a shape at most, mm; at most nothing where all are inside. */
export const sticksOutMm = (points: readonly Point[], of: MmShape): number =>
  points.reduce((most, point) => Math.max(most, edgeDistanceMm(of, point)), Number.NEGATIVE_INFINITY);
