import type { Boat } from '../boat/boat-schema.ts';
import { limitValue } from '../boat/limit-value.ts';
import type { Bank } from '../boat/supply.ts';
import { bankFigures, ratedHours } from '../facts/day-duty.ts';
import { peukert } from '../power/peukert.ts';

/** How long a bank carries a mean current with nothing charging; `hours` is absent where nothing draws. */
export interface Endurance {
  readonly usableAh: number;
  readonly hours?: number;
}

/**
 * How long a bank lasts: the share of it that is used, of what it gives at this current. That is t = H (C / (I H))^k held to
 * C, with C at the 20-hour rate and the worse exponent of its chemistry; the share is 50 % of lead, 80 % of lithium, or the
 * owner's own.
 *
 * @example bankEndurance({}, { chemistry: 'agm', capacityAh: 200 }, 5).hours // 20
 */
export const bankEndurance = (
  boat: Pick<Boat, 'limits'>,
  { chemistry, capacityAh }: Pick<Bank, 'chemistry' | 'capacityAh'>,
  meanA: number,
): Endurance => {
  const { usable, exponent } = bankFigures[chemistry];
  const given = peukert({
    ratedAh: capacityAh,
    ratedHours: ratedHours.value,
    currentA: meanA,
    exponent: exponent.most,
  });
  const usableAh = (given.usableAh * limitValue(boat, usable)) / 100;
  return meanA > 0 ? { usableAh, hours: usableAh / meanA } : { usableAh };
};
