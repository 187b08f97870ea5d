/**
 * How far people keep off an antenna, m: where its power over a sphere falls to a limit. `dutyPct`: the share of six minutes
 * in which it sends at most, over which the limit is a mean.
 */
export const peopleDistanceM = ({
  powerW,
  gainDbi,
  limitWPerM2,
  dutyPct = 100,
}: {
  readonly powerW: number;
  readonly gainDbi: number;
  readonly limitWPerM2: number;
  readonly dutyPct?: number;
}): number => Math.sqrt((powerW * (dutyPct / 100) * 10 ** (gainDbi / 10)) / (4 * Math.PI * limitWPerM2));

/** How much farther off a stricter limit is. */
export const distanceRatio = (laxWPerM2: number, strictWPerM2: number): number => Math.sqrt(laxWPerM2 / strictWPerM2);
