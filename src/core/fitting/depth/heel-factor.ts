/**
 * How much longer the slant of a beam is than the depth under the transducer, over a flat bottom: 1 / cos of the angle.
 * Holds for heel and for a transducer that leans.
 *
 * @example heelFactor(20) // 1.0642
 */
export const heelFactor = (deg: number): number => 1 / Math.cos((deg * Math.PI) / 180);
