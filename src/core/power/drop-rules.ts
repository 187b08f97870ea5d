import { dropConstants } from '../facts/conductors.ts';
import { inchesInFoot, inchM } from '../units/foot.ts';

/** The two published rules for the volts a conductor loses: `abyc` with K = 10.75, `iso` with 0.0164. */
export type DropRule = 'abyc' | 'iso';

/**
 * Volts lost on the way out and back by a published rule: E = k I L / S, with k in ohm mm²/km, I A, L the round trip in m
 * and S mm². Neither rule knows the real cable: tinned class 5 wire may have 18 to 25 % more resistance than `iso` says.
 *
 * @example dropByRuleV({ rule: 'iso', currentA: 1.6, loopM: 22, areaMm2: 1.5 }) // 0.3849
 */
export const dropByRuleV = ({
  rule,
  currentA,
  loopM,
  areaMm2,
}: {
  readonly rule: DropRule;
  readonly currentA: number;
  readonly loopM: number;
  readonly areaMm2: number;
}): number => (dropConstants[rule].value * currentA * loopM) / areaMm2 / 1000;

/**
 * Area a conductor needs by a published rule, mm²: S = k I L / E, the same rule turned round. Without end where no drop is
 * allowed at all.
 *
 * @example areaByRuleMm2({ rule: 'abyc', currentA: 10, loopM: 6.4, dropV: 0.36 }) // 3.177
 */
export const areaByRuleMm2 = ({
  rule,
  currentA,
  loopM,
  dropV,
}: {
  readonly rule: DropRule;
  readonly currentA: number;
  readonly loopM: number;
  readonly dropV: number;
}): number => perVolt((dropConstants[rule].value * currentA * loopM) / 1000, dropV);

/**
 * Current a conductor may carry for its drop by a published rule, A: I = E S / (k L). Nothing is said of its heat.
 *
 * @example currentByRuleA({ rule: 'iso', areaMm2: 10, loopM: 3, dropV: 0.36 }) // 73.17
 */
export const currentByRuleA = ({
  rule,
  areaMm2,
  loopM,
  dropV,
}: {
  readonly rule: DropRule;
  readonly areaMm2: number;
  readonly loopM: number;
  readonly dropV: number;
}): number => perVolt(dropV * areaMm2 * 1000, dropConstants[rule].value * loopM);

/**
 * Area a conductor needs as the American text prints it, circular mils: CM = 10.75 I L / E, with L the round trip in feet
 * (ABYC E-11, second-hand).
 *
 * @example circularMilsForDrop({ currentA: 10, loopFt: 21, dropV: 0.36 }) // 6270.8
 */
export const circularMilsForDrop = ({
  currentA,
  loopFt,
  dropV,
}: {
  readonly currentA: number;
  readonly loopFt: number;
  readonly dropV: number;
}): number => perVolt(dropConstants.abycCircularMils.value * currentA * loopFt, dropV);

/** Feet of a length in metres. */
export const feetOfM = (lengthM: number): number => lengthM / (inchM * inchesInFoot);

/** A share that is 0 where there is nothing to share, and endless where there is and nothing to divide it by. */
const perVolt = (whole: number, divisor: number): number => {
  if (whole <= 0) return 0;
  return divisor > 0 ? whole / divisor : Number.POSITIVE_INFINITY;
};
