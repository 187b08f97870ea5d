import type { Measure } from '../../core/boat/measure.ts';
import { printLength } from '../../core/units/print-length.ts';

/**
 * A length in both units, and how it is known.
 *
 * @example lengthInWords({ valueM: 2.4, how: 'taped' }) // '2.40 m (7 ft 10 in), taped'
 */
export const lengthInWords = ({ valueM, how }: Pick<Measure, 'valueM' | 'how'>): string =>
  `${printLength({ valueM, as: 'metres' })} (${printLength({ valueM, as: 'feet' })}), ${how}`;
