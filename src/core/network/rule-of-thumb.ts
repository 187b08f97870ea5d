import { ampsOfLen } from './len-of.ts';

/** A piece of the way from the supply to the farthest device; `ohmPerM` of one conductor. */
export interface Stretch {
  readonly lengthM: number;
  readonly ohmPerM: number;
}

/**
 * Volts lost on one leg by the published rule of thumb: dV = 0.1 x N x L x R, with N the LEN of the leg, L metres from
 * the supply to the farthest device (feed lead, trunk and its drop), R ohm per metre of one conductor; 0.1 = two
 * conductors x 0.05 A. It puts the whole load at the far end, so it never reads lower than the exact answer for
 * constant current. A feed in the middle: each side alone. Source: several installation handbooks of boat-equipment
 * makers, names withheld.
 *
 * @example ruleOfThumb({ len: 16, stretches: [{ lengthM: 38, ohmPerM: 0.053 }] }) // 3.2224
 */
export const ruleOfThumb = ({
  len,
  stretches,
}: {
  readonly len: number;
  readonly stretches: readonly Stretch[];
}): number => stretches.reduce((sumV, { lengthM, ohmPerM }) => sumV + 2 * ampsOfLen(len) * lengthM * ohmPerM, 0);
