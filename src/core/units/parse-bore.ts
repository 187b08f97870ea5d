import { parseLength } from './parse-length.ts';

/**
 * Reads the bore of a pipe or the thickness of a cable that a person typed, in millimetres; a bare number is millimetres.
 * Undefined when it is no length.
 *
 * @example parseBore('1 1/4 in') // 31.75
 */
export const parseBore = (text: string): number | undefined => {
  const isBare = /^\s*\d+(?:[.,]\d+)?\s*$/.test(text);
  const valueM = parseLength(isBare ? `${text.trim()} mm` : text);
  return valueM === undefined ? undefined : Number((valueM * 1000).toFixed(3));
};
