import type { TextStyle } from '../drawing/text-width.ts';
import { textWidthMm } from '../drawing/text-width.ts';

/** No text of a printed sheet is smaller than this: 7 point on A4, about 1.5 mm high capitals copied once still read. */
export const leastTextMm = 2.3;

/** The texts of a printed sheet. */
export const sheetText = {
  plain: { sizeMm: 2.6, face: 'words' },
  name: { sizeMm: 2.6, face: 'words', weight: 'semibold' },
  head: { sizeMm: 3, face: 'words', weight: 'semibold' },
  small: { sizeMm: leastTextMm, face: 'words' },
  label: { sizeMm: 2.4, face: 'figures' },
} as const satisfies Record<string, TextStyle>;

/** From one line of text to the next. */
export const sheetLineMm = 3.5;

const cutWord = (word: string, style: TextStyle, widthMm: number): string[] => {
  const parts: string[] = [];
  let part = '';
  for (const letter of word) {
    if (part !== '' && textWidthMm(part + letter, style) > widthMm) {
      parts.push(part);
      part = '';
    }
    part += letter;
  }
  return part === '' ? parts : [...parts, part];
};

const unitWord = /^(A|Ah|AWG|V|W|m|mm|mm²|ft|in|kg|%)[.,;:)]*$/;

/** Words that may not be parted: a figure keeps its unit. */
const unparted = (text: string): string[] => {
  const words: string[] = [];
  for (const word of text.split(' ')) {
    const last = words.at(-1);
    if (last !== undefined && unitWord.test(word) && /\d$/.test(last)) words[words.length - 1] = `${last} ${word}`;
    else words.push(word);
  }
  return words;
};

/** The text in lines no wider than `widthMm`, a figure never without its unit; a word that is wider alone, such as an id, goes on in the next line. */
export const sheetLines = (text: string, style: TextStyle, widthMm: number): string[] => {
  const lines: string[] = [];
  for (const word of unparted(text).flatMap((one) => cutWord(one, style, widthMm))) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidthMm(longer, style) <= widthMm) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
};

/** The text in so many lines at the most; where it is longer, whole words are left out at its end and it says so. */
export const fewLines = (
  text: string,
  style: TextStyle,
  { widthMm, most }: { readonly widthMm: number; readonly most: number },
): string[] => {
  const words = text.split(' ');
  for (let count = words.length; count > 0; count--) {
    const shown = words
      .slice(0, count)
      .join(' ')
      .replace(/[,;:]$/, '');
    const lines = sheetLines(count === words.length ? text : `${shown} …`, style, widthMm);
    if (lines.length <= most) return lines;
  }
  return sheetLines(text, style, widthMm).slice(0, most);
};
