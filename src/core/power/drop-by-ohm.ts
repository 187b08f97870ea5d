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
