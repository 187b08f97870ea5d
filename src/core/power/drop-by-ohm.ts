/**
 * Volts lost in a real conductor on the way out and back: E = I L R / 1000, with L the round trip in m and R in ohm/km of
 * one conductor at the temperature it works at.
 *
 * @example dropByOhmV({ currentA: 1.6, loopM: 22, ohmPerKm: 13.7 }) // 0.4822
 */
export const dropByOhmV = ({
  currentA,
  loopM,
  ohmPerKm,
}: {
  readonly currentA: number;
  readonly loopM: number;
  readonly ohmPerKm: number;
}): number => (currentA * loopM * ohmPerKm) / 1000;

/**
 * Current at which a real conductor loses so many volts out and back, A: the same turned round. Cables in a row share one
 * budget: their lengths are added.
 *
 * @example currentByOhmA({ dropV: 0.36, loopM: 14, ohmPerKm: 8.21 }) // 3.13
 */
export const currentByOhmA = ({
  dropV,
  loopM,
  ohmPerKm,
}: {
  readonly dropV: number;
  readonly loopM: number;
  readonly ohmPerKm: number;
}): number => {
  if (dropV <= 0) return 0;
  return loopM > 0 ? (dropV * 1000) / (loopM * ohmPerKm) : Number.POSITIVE_INFINITY;
};
