import type { Point } from '../../../papers/drawing/point.ts';

const ringMm = 1.1;

/** A small ring around a point of the sheet: something can be let go there. */
export const ringPath = ([xMm, yMm]: Point): string =>
  `M${xMm - ringMm} ${yMm}a${ringMm} ${ringMm} 0 1 0 ${2 * ringMm} 0a${ringMm} ${ringMm} 0 1 0 ${-2 * ringMm} 0Z`;
