import { type TextStyle, textWidthMm } from './text-width.ts';

/** The text in lines no wider than `widthMm`, or undefined where one word alone is wider: words are never cut. */
export const wrapText = (text: string, style: TextStyle, widthMm: number): string[] | undefined => {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    if (textWidthMm(word, style) > widthMm) return undefined;
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidthMm(longer, style) <= widthMm) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
};
