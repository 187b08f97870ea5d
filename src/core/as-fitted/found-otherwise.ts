import { parseArea } from '../units/parse-area.ts';
import { parseLength } from '../units/parse-length.ts';
import type { FoundOtherwise } from './fitted-edits.ts';

/** What can differ, in the order in which it is asked. */
export const foundKinds = [
  'place',
  'length',
  'route',
  'wire',
  'fuse',
  'other',
] as const satisfies readonly FoundOtherwise['what'][];
export type FoundKind = (typeof foundKinds)[number];

/** No tape reads finer than a millimetre. */
const toMillimetre = (valueM: number): number => Math.round(valueM * 1000) / 1000;

const ampsOf = (text: string): number | undefined => {
  const plain = /^\s*(\d+(?:[.,]\d+)?)\s*a?\s*$/i.exec(text)?.[1];
  const amps = plain === undefined ? 0 : Number(plain.replace(',', '.'));
  return amps > 0 && amps <= 10_000 ? amps : undefined;
};

/**
 * A difference as it was typed; undefined where the value is none of its kind. A route is typed as its ways, with commas.
 *
 * @example foundOtherwise({ what: 'fuse', about: 'house.radar', typed: '7,5 A' }) // { what: 'fuse', circuit: 'house.radar', ratingA: 7.5 }
 */
export const foundOtherwise = ({
  what,
  about,
  typed,
}: {
  readonly what: FoundKind;
  readonly about: string;
  readonly typed: string;
}): FoundOtherwise | undefined => {
  const plain = typed.trim();
  if (about === '' || plain === '') return undefined;
  switch (what) {
    case 'place':
      return { what, unit: about, place: plain };
    case 'length': {
      const valueM = parseLength(plain);
      return valueM === undefined ? undefined : { what, line: about, lengthM: toMillimetre(valueM) };
    }
    case 'route':
      return { what, line: about, ways: plain.split(',') };
    case 'wire': {
      const areaMm2 = parseArea(plain);
      return areaMm2 === undefined ? undefined : { what, line: about, areaMm2 };
    }
    case 'fuse': {
      const ratingA = ampsOf(plain);
      return ratingA === undefined ? undefined : { what, circuit: about, ratingA };
    }
    case 'other':
      return { what, about, is: plain.slice(0, 400) };
  }
};
