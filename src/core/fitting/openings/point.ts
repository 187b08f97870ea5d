/** A point in millimetres, x to the right, y up, as seen from the front. */
export type Point = readonly [xMm: number, yMm: number];
