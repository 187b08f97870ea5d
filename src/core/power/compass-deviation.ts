const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** How far a compass card turns: where the stray field lies square to the horizontal field, and in the worst direction. */
export interface Deviation {
  readonly squareDeg: number;
  /** 180 where the stray field is as strong as the horizontal field or stronger */
  readonly worstDeg: number;
}

/**
 * Deviation a stray field causes: δ = atan(B / H), H the horizontal field of the Earth; over all directions at worst
 * asin(B / H). Both fields in µT.
 *
 * @example compassDeviation({ fieldUt: 3.333, horizontalUt: 20 }).squareDeg // 9.46
 */
export const compassDeviation = ({
  fieldUt,
  horizontalUt,
}: {
  readonly fieldUt: number;
  readonly horizontalUt: number;
}): Deviation => ({
  squareDeg: degrees(Math.atan2(fieldUt, horizontalUt)),
  worstDeg: fieldUt < horizontalUt ? degrees(Math.asin(fieldUt / horizontalUt)) : fieldUt > 0 ? 180 : 0,
});
