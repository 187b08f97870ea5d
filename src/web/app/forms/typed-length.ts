import { parseLength } from '../../../core/units/parse-length.ts';
import { printLength } from '../../../core/units/print-length.ts';
import type { lengthUnits } from '../../../papers/lists/in-units.ts';
import type { Parse } from './parse-typed.ts';

type LengthUnits = (typeof lengthUnits)[number];

/** No tape reads finer than a millimetre. */
const toMillimetre = (valueM: number): number => Math.round(valueM * 1000) / 1000;

/** A length that a person typed, in metres to the millimetre. */
export const parseTyped: Parse<number> = (text) => {
  const valueM = parseLength(text);
  return valueM === undefined ? undefined : toMillimetre(valueM);
};

/** The same with a sign before it: a measure to either side, or above and below. */
export const parseSigned: Parse<number> = (text) => {
  const [, sign = '', rest = ''] = /^\s*([-−+]?)\s*(.*)$/.exec(text) ?? [];
  const valueM = parseTyped(rest);
  if (valueM === undefined) return undefined;
  return sign === '' || sign === '+' ? valueM : 0 - valueM;
};

/** A length as it stands in a field. */
export const shownLength = (valueM: number, units: LengthUnits): string => {
  const shown = printLength({ valueM: Math.abs(valueM), as: units === 'feet' ? 'feet' : 'metres' });
  return valueM < 0 && Number.parseFloat(shown) !== 0 ? `−${shown}` : shown;
};
