/** A point on the sheet in millimetres, y downwards. */
export type Point = readonly [xMm: number, yMm: number];

/** From a to b by the share of the way: 0 is a, 1 is b. */
export const between = (a: Point, b: Point, share: number): Point => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

/** Straight distance in millimetres. */
export const distanceMm = (a: Point, b: Point): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** Unit vector from a to b; to the right where both are one point. */
export const direction = (a: Point, b: Point): Point => {
  const lengthMm = distanceMm(a, b);
  return lengthMm === 0 ? [1, 0] : [(b[0] - a[0]) / lengthMm, (b[1] - a[1]) / lengthMm];
};

/** The point reached from one point by `alongMm` in a direction and `acrossMm` to its right hand (y points down). */
export const stepFrom = (from: Point, heading: Point, step: { alongMm: number; acrossMm: number }): Point => [
  from[0] + heading[0] * step.alongMm - heading[1] * step.acrossMm,
  from[1] + heading[1] * step.alongMm + heading[0] * step.acrossMm,
];
