import { parseLength } from '../../../../../core/units/parse-length.ts';

/** A number above nothing as typed; undefined where it is none. */
export const typedNumber = (text: string): number | undefined => {
  const value = Number(text.replace(',', '.') || Number.NaN);
  return Number.isFinite(value) && value > 0 ? value : undefined;
};

/** No tape reads finer than a millimetre. */
const toMillimetre = (valueM: number): number => Math.round(valueM * 1000) / 1000;

/** A taped length; undefined where none was typed or it cannot be read. */
export const typedLength = (text: string): { valueM: number; how: 'taped' } | undefined => {
  const valueM = parseLength(text);
  return valueM === undefined ? undefined : { valueM: toMillimetre(valueM), how: 'taped' };
};

/** What may be left out: nothing for an empty text, else what it reads as. */
export const ifTyped = <Value>(text: string, parse: (text: string) => Value | undefined): Value | 'none' | undefined =>
  text === '' ? 'none' : parse(text);
