/** Volts that may be lost, and which of the two limits is the tighter. */
export interface DropBudget {
  readonly dropV: number;
  readonly by: 'percent' | 'unit';
}

/**
 * Volts that may be lost on the way to a unit: a share of the nominal voltage, or what is left between the source at its
 * lowest and the least volts the unit stands, whichever is less. Below 0 where the source itself is too low.
 *
 * @example dropBudget({ nominalV: 12, limitPct: 3, unit: { sourceV: 11, leastV: 10.8 } }) // 0.2 V, by the unit
 */
export const dropBudget = ({
  nominalV,
  limitPct,
  unit,
}: {
  readonly nominalV: number;
  readonly limitPct: number;
  readonly unit?: { readonly sourceV: number; readonly leastV: number };
}): DropBudget => {
  const percentV = (nominalV * limitPct) / 100;
  const unitV = unit === undefined ? Number.POSITIVE_INFINITY : unit.sourceV - unit.leastV;
  return unitV < percentV ? { dropV: unitV, by: 'unit' } : { dropV: percentV, by: 'percent' };
};
