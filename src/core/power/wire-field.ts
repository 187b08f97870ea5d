import { wireFieldConstant } from '../facts/compass-figures.ts';

/**
 * Magnetic field of a long straight wire at a distance, µT: B = 0.2 I / d; of a go-and-return pair with its wires s apart
 * B = 0.2 I s / (d² - s²/4). Endless at the wire itself and between the wires of the pair. Wires on both sides of a compass
 * add up.
 *
 * @example wireFieldUt({ currentA: 5, distanceM: 0.3 }) // 3.333
 */
export const wireFieldUt = ({
  currentA,
  distanceM,
  pairSpacingM,
}: {
  readonly currentA: number;
  readonly distanceM: number;
  readonly pairSpacingM?: number;
}): number => {
  if (currentA === 0 || pairSpacingM === 0) return 0;
  if (distanceM <= (pairSpacingM ?? 0) / 2) return Number.POSITIVE_INFINITY;
  const single = wireFieldConstant.value * currentA;
  return pairSpacingM === undefined
    ? single / distanceM
    : (single * pairSpacingM) / (distanceM ** 2 - pairSpacingM ** 2 / 4);
};

/**
 * Most field of a small loop at a distance, µT: B = 0.2 I A / d³, A in m². A twisted pair makes none a pitch or two away,
 * so the untwisted loop at its tail is what counts.
 *
 * @example tailLoopFieldUt({ currentA: 5, loopAreaM2: 0.002, distanceM: 0.3 }) // 0.0741
 */
export const tailLoopFieldUt = ({
  currentA,
  loopAreaM2,
  distanceM,
}: {
  readonly currentA: number;
  readonly loopAreaM2: number;
  readonly distanceM: number;
}): number => {
  const moment = wireFieldConstant.value * currentA * loopAreaM2;
  if (moment === 0) return 0;
  return distanceM > 0 ? moment / distanceM ** 3 : Number.POSITIVE_INFINITY;
};
