import { aisFields } from '../../facts/fitting-limits.ts';

const prefix = /^[A-Z]\/[A-Z]\s+/;
const keptAhead = 15;
const keptBehind = 4;

/**
 * A ship's name as the AIS field holds it: capitals of its own alphabet, no prefix such as S/V, at most 20 characters; a longer one
 * keeps its first 15, an underscore and its last 4. Shortened by hand it may be typed otherwise.
 *
 * @example aisName('The Grand Jolly Roger') // 'THE GRAND JOLLY_OGER'
 */
export const aisName = (name: string): string => {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toUpperCase()
    .replace(/[^ -_]/g, '')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(prefix, '');
  return plain.length <= aisFields.nameChars ? plain : `${plain.slice(0, keptAhead)}_${plain.slice(-keptBehind)}`;
};
