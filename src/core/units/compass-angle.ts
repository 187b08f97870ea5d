/** Degrees of an angle in radians. */
export const degreesOfRadians = (radians: number): number => (radians * 180) / Math.PI;

/**
 * True bearing of a magnetic one, degrees from 0 up to 360; variation is positive to the east.
 *
 * @example trueBearingDeg({ magneticDeg: 132.7, variationDeg: -4.2 }) // 128.5
 */
export const trueBearingDeg = ({ magneticDeg, variationDeg }: { magneticDeg: number; variationDeg: number }): number =>
  (((magneticDeg + variationDeg) % 360) + 360) % 360;
