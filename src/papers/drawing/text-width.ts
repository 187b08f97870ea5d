import { characters, widths } from './generated/font-widths.ts';
import type { TextShape } from './shapes.ts';

type Face = keyof typeof widths;

const codeOf = (character: string): number => character.codePointAt(0) ?? 0;

/** Advance widths by code point, 0 where the face has none: asked for every letter of every paper. */
const tableOf = (face: Face): Uint16Array => {
  const table = new Uint16Array(1 + Math.max(...[...characters].map(codeOf)));
  for (const [index, character] of [...characters].entries()) table[codeOf(character)] = widths[face][index] ?? 0;
  return table;
};

const tables = { words: tableOf('words'), wordsSemibold: tableOf('wordsSemibold'), figures: tableOf('figures') };

/** A character no face has is taken as a full square, so that a text is never measured too narrow. */
const unknownThousandths = 1000;

export type TextStyle = Pick<TextShape, 'sizeMm' | 'face' | 'weight'>;

/**
 * Width of a text in millimetres, from the advance widths of the shipped faces (kerning left out: it only narrows).
 *
 * @example textWidthMm('12.3 m', { sizeMm: 3, face: 'figures' }) // 11.7
 */
export const textWidthMm = (text: string, style: TextStyle): number => {
  const face: Face = style.face === 'figures' ? 'figures' : style.weight === 'semibold' ? 'wordsSemibold' : 'words';
  const table = tables[face];
  let thousandths = 0;
  for (const character of text) thousandths += table[codeOf(character)] || unknownThousandths;
  return (thousandths * style.sizeMm) / 1000;
};
