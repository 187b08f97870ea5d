/** Where a unit that holds its power settles, or that there is no such point: then it resets again and again. */
export type OperatingPoint =
  | { readonly works: true; readonly currentA: number; readonly loadV: number }
  | { readonly works: false; readonly why: 'no operating point' };

/**
 * Current and volts of one unit that holds its power, behind a loop of so many ohm: I = (V - √(V² - 4 P R)) / (2 R), the
 * higher of two answers in volts, written as 2 P / (V + √(…)) so that no resistance at all is no trouble. None where
 * V² < 4 P R.
 *
 * @example constantPower({ powerW: 37, sourceV: 11, loopOhm: 0.25 }) // 3.67 A, 10.083 V
 */
export const constantPower = ({
  powerW,
  sourceV,
  loopOhm,
}: {
  readonly powerW: number;
  readonly sourceV: number;
  readonly loopOhm: number;
}): OperatingPoint => {
  const under = sourceV ** 2 - 4 * powerW * loopOhm;
  if (!(sourceV > 0) || under < 0) return { works: false, why: 'no operating point' };
  const currentA = (2 * powerW) / (sourceV + Math.sqrt(under));
  return { works: true, currentA, loadV: sourceV - currentA * loopOhm };
};
