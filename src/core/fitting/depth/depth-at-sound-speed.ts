/** The depth an echo gives where sound runs at another speed than the sounder reckons with. */
export interface DepthAtSoundSpeed {
  readonly shownM: number;
  /** of the true depth; above 0 it shows more water than there is */
  readonly errorPct: number;
}

/**
 * A sounder measures time: what it shows is the true depth times the speed it is set to, over the speed of sound in the
 * water it floats in. Set for the sea and used in fresh water it shows too much, which is the unsafe way.
 *
 * @example depthAtSoundSpeed({ trueM: 4, setMPerS: 1500, actualMPerS: 1466 }).shownM // 4.093
 */
export const depthAtSoundSpeed = ({
  trueM,
  setMPerS,
  actualMPerS,
}: {
  readonly trueM: number;
  readonly setMPerS: number;
  readonly actualMPerS: number;
}): DepthAtSoundSpeed => ({
  shownM: (trueM * setMPerS) / actualMPerS,
  errorPct: (setMPerS / actualMPerS - 1) * 100,
});
