/** What a battery gives at a steady current. By the formula alone, and held to its rated capacity. */
export interface PeukertAnswer {
  readonly formulaHours: number;
  readonly formulaAh: number;
  /** below the rated current the formula gives more than the battery holds: this is never above `ratedAh` */
  readonly usableAh: number;
  readonly usableHours: number;
}

/**
 * How long a battery lasts at a steady current: t = H (C / (I H))^k, with C Ah at the H-hour rate. At the rated current
 * the answer is H whatever k is; the shorter form I^k t = C is wrong there.
 *
 * @example peukert({ ratedAh: 200, ratedHours: 20, currentA: 20, exponent: 1.2 }).usableAh // 174.1
 */
export const peukert = ({
  ratedAh,
  ratedHours,
  currentA,
  exponent,
}: {
  readonly ratedAh: number;
  readonly ratedHours: number;
  readonly currentA: number;
  readonly exponent: number;
}): PeukertAnswer => {
  if (!(currentA > 0)) return { formulaHours: Infinity, formulaAh: Infinity, usableAh: ratedAh, usableHours: Infinity };
  const formulaHours = ratedHours * (ratedAh / (currentA * ratedHours)) ** exponent;
  const formulaAh = formulaHours * currentA;
  const usableAh = Math.min(formulaAh, ratedAh);
  return { formulaHours, formulaAh, usableAh, usableHours: usableAh / currentA };
};

/** A battery run down at one current. */
export interface Discharge {
  readonly currentA: number;
  readonly hours: number;
}

/**
 * Peukert's exponent from two discharges at different currents: k = (ln t2 - ln t1) / (ln I1 - ln I2); undefined where
 * the currents are the same.
 *
 * @example peukertExponent({ currentA: 10, hours: 20 }, { currentA: 20, hours: 8.7055 }) // 1.2
 */
export const peukertExponent = (one: Discharge, other: Discharge): number | undefined =>
  one.currentA === other.currentA
    ? undefined
    : (Math.log(other.hours) - Math.log(one.hours)) / (Math.log(one.currentA) - Math.log(other.currentA));
