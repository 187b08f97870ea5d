/** Something that stands upright aboard: a whip, a person, a mast; metres as places have them. */
export interface Upright {
  readonly xM: number;
  readonly yM: number;
  /** its foot and its tip over the water */
  readonly fromM: number;
  readonly toM: number;
}

/** Across the water from one to the other. */
export const acrossM = (one: Pick<Upright, 'xM' | 'yM'>, other: Pick<Upright, 'xM' | 'yM'>): number =>
  Math.hypot(one.xM - other.xM, one.yM - other.yM);

/** From the nearest part of one to the nearest part of the other. */
export const apartM = (one: Upright, other: Upright): number => {
  const gapM = Math.max(0, one.fromM - other.toM, other.fromM - one.toM);
  return Math.hypot(acrossM(one, other), gapM);
};

/** From middle to middle in height. */
export const middleUpM = (one: Upright, other: Upright): number =>
  Math.abs((one.fromM + one.toM) / 2 - (other.fromM + other.toM) / 2);
