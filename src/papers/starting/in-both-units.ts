import { printLength } from '../../core/units/print-length.ts';

/**
 * A length in metres and in feet.
 *
 * @example inBothUnits(11.8) // '11.80 m (38 ft 9 in)'
 */
export const inBothUnits = (valueM: number): string =>
  `${printLength({ valueM, as: 'metres' })} (${printLength({ valueM, as: 'feet' })})`;
