/**
 * An angle as the shorter turn, degrees from -180 up to 180: what two bearings differ by, across north too.
 *
 * @example turnDeg(2 - 358) // 4
 */
export const turnDeg = (deg: number): number => ((((deg + 180) % 360) + 360) % 360) - 180;
