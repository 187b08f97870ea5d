import { lenCurrent } from '../facts/bus-limits.ts';

/** A bus current in amperes as a load number: LEN = current / 50 mA, rounded up to a whole number. */
export const lenOf = (maxA: number): number => {
  const exact = (maxA * 1000) / lenCurrent.value;
  // 0.15 A is 3 LEN however the division falls in binary; a billionth of a LEN is no current.
  return Math.ceil(exact - 1e-9);
};

/** The current in amperes that a load number stands for. */
export const ampsOfLen = (len: number): number => (len * lenCurrent.value) / 1000;
