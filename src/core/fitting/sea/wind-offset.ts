/** The wind angle read on both tacks with the same trim, each as the screen shows it from the bow. */
export interface WindPair {
  readonly portDeg: number;
  readonly starboardDeg: number;
}

/** By how much what is shown is turned, and to which side. */
export interface WindOffset {
  /** degrees; positive where it is turned to port */
  readonly offsetDeg: number;
  readonly turnedTo: 'port' | 'starboard' | 'neither';
  /** how far the pairs lie from their mean, degrees: more than a few, and it was not the same trim */
  readonly spreadDeg: number;
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Offset of a wind vane from both tacks: o = mean of (port - starboard) / 2, degrees, positive = turned to port: what is shown lies so far to
 * port of the truth. Undefined without a pair.
 *
 * @example windOffset([{ portDeg: 35, starboardDeg: 25 }]) // 5 to port
 */
export const windOffset = (pairs: readonly WindPair[]): WindOffset | undefined => {
  if (pairs.length === 0) return undefined;
  const halves = pairs.map(({ portDeg, starboardDeg }) => (portDeg - starboardDeg) / 2);
  const offsetDeg = mean(halves);
  return {
    offsetDeg,
    turnedTo: offsetDeg > 0 ? 'port' : offsetDeg < 0 ? 'starboard' : 'neither',
    spreadDeg: Math.max(...halves.map((half) => Math.abs(half - offsetDeg))),
  };
};
