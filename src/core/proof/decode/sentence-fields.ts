import { kelvinOfCelsius } from '../../units/celsius.ts';
import type { DecodedValue, Quantity, ValueReference } from './decoded-value.ts';

/** The fields of one sentence, from 1 on behind the address; an empty one is absent. */
export interface SentenceFields {
  /** whether a field holds just this letter */
  is(at: number, letter: string): boolean;
  text(at: number): string | undefined;
  number(at: number): number | undefined;
  /** a number and, two fields on or beside it, its unit: the first of the pairs that is there, in the quantity’s unit */
  measured(...pairs: readonly (readonly [at: number, factor: number])[]): number | undefined;
  /** degrees to rad */
  angle(at: number): number | undefined;
  /** a size with the letter of its side in the next field; the letter given is the positive side */
  sided(at: number, positive: string, negative: string): number | undefined;
  /** degrees of `ddmm.mmm` with the letter of its half in the next field */
  place(at: number, positive: 'N' | 'E', negative: 'S' | 'W'): number | undefined;
}

/** rad of a degree. */
export const radians = Math.PI / 180;
/** m/s of a knot, and of a kilometre an hour. */
export const ofKnots = 1852 / 3600;
export const ofKmPerHour = 1000 / 3600;
export const ofNauticalMiles = 1852;
export const ofFeet = 0.3048;

const numberPattern = /^[+-]?\d+(?:\.\d*)?$|^[+-]?\.\d+$/;
const placePattern = /^(\d{2,3})(\d{2}(?:\.\d*)?)$/;
const largestDegrees = { N: 90, E: 180 } as const;
const minutesInDegree = 60;

/** Reads the fields behind the address, which are counted from 1. */
export const sentenceFields = (fields: readonly string[]): SentenceFields => {
  const text = (at: number): string | undefined => {
    const found = fields[at - 1]?.trim();
    return found === undefined || found === '' ? undefined : found;
  };
  const number = (at: number): number | undefined => {
    const found = text(at);
    return found !== undefined && numberPattern.test(found) ? Number(found) : undefined;
  };
  const scaled = (value: number | undefined, factor: number): number | undefined =>
    value === undefined ? undefined : value * factor;
  return {
    text,
    number,
    is: (at, letter) => text(at) === letter,
    measured: (...pairs) => {
      for (const [at, factor] of pairs) {
        const value = scaled(number(at), factor);
        if (value !== undefined) return value;
      }
      return undefined;
    },
    angle: (at) => scaled(number(at), radians),
    sided(at, positive, negative) {
      if (text(at + 1) === positive) return number(at);
      return text(at + 1) === negative ? scaled(number(at), -1) : undefined;
    },
    place(at, positive, negative) {
      const [, degrees, minutes] = placePattern.exec(text(at) ?? '') ?? [];
      const half = text(at + 1);
      if (degrees === undefined || minutes === undefined || (half !== positive && half !== negative)) return undefined;
      const value = Number(degrees) + Number(minutes) / minutesInDegree;
      if (value > largestDegrees[positive] || Number(minutes) >= minutesInDegree) return undefined;
      return half === positive ? value : -value;
    },
  };
};

/** A value with what it is measured from, or nothing where it was not told. */
export const toldValue = (
  quantity: Quantity,
  value: number | undefined,
  more: { readonly reference?: ValueReference; readonly instance?: number; readonly kind?: number } = {},
): DecodedValue[] => (value === undefined ? [] : [{ quantity, value, ...more }]);

/** An angle of the compass, which a sentence tells only from 0 to 360. */
export const toldDirection = (
  quantity: Quantity,
  value: number | undefined,
  reference: 'true' | 'magnetic',
): DecodedValue[] =>
  toldValue(quantity, value === undefined || value < 0 || value > 2 * Math.PI + 1e-9 ? undefined : value, {
    reference,
  });

/** K of a field in °C. */
export const kelvinAt = (fields: SentenceFields, at: number): number | undefined => {
  const celsius = fields.number(at);
  return celsius === undefined ? undefined : kelvinOfCelsius(celsius);
};
