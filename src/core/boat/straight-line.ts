/** Where something is aboard, in metres: forward of the transom, to starboard, above the waterline. */
export interface Spot {
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
}

/**
 * Straight line between two spots, in metres.
 *
 * @example straightLineM({ xM: 0, yM: 0, zM: 0 }, { xM: 3, yM: 4, zM: 0 }) // 5
 */
export const straightLineM = (one: Spot, other: Spot): number =>
  Math.hypot(one.xM - other.xM, one.yM - other.yM, one.zM - other.zM);
