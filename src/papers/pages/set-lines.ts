import { type TextStyle, textWidthMm } from '../drawing/text-width.ts';

/** After these a long id or address may go on in the next line. */
const breakAfter = /(?<=[/\\\-_.,:;|+>@=])/u;

/** As much of a word as a line has room for, at least one character. */
const fitting = (word: string, style: TextStyle, widthMm: number): number => {
  const characters = [...word];
  let count = 1;
  while (count < characters.length && textWidthMm(characters.slice(0, count + 1).join(''), style) <= widthMm)
    count += 1;
  return characters.slice(0, count).join('').length;
};

/** A word too wide for a line in pieces that fit, broken after a mark where it has one, else wherever the line ends. */
const piecesOf = (word: string, style: TextStyle, widthMm: number): string[] => {
  if (textWidthMm(word, style) <= widthMm) return [word];
  const parts = word.split(breakAfter);
  const pieces: string[] = [];
  for (const part of parts) {
    let rest = part;
    const joined = `${pieces.at(-1) ?? ''}${part}`;
    if (pieces.length > 0 && textWidthMm(joined, style) <= widthMm) {
      pieces[pieces.length - 1] = joined;
      continue;
    }
    while (textWidthMm(rest, style) > widthMm) {
      const length = fitting(rest, style, widthMm);
      pieces.push(rest.slice(0, length));
      rest = rest.slice(length);
    }
    if (rest !== '') pieces.push(rest);
  }
  return pieces;
};

/** The widest piece of a text that is kept on one line, at most `mostMm`: the least room a column must give it. */
export const widestWordMm = (text: string, style: TextStyle, mostMm: number): number => {
  let widest = 0;
  for (const word of text.split(/[ \n]/)) {
    const wordMm = textWidthMm(word, style);
    widest = Math.max(
      widest,
      wordMm <= mostMm ? wordMm : Math.max(...word.split(breakAfter).map((part) => textWidthMm(part, style))),
    );
  }
  return Math.min(widest, mostMm);
};

/**
 * A text in lines no wider than `widthMm`. It is broken at spaces and at line ends of its own; a hard space holds a figure to
 * its unit. No letter is ever left out: a word wider than the line goes on in the next.
 */
export const setLines = (text: string, style: TextStyle, widthMm: number): string[] => {
  const lines: string[] = [];
  for (const paragraph of text.split('\n')) {
    let line = '';
    for (const word of paragraph.split(' ')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (textWidthMm(longer, style) <= widthMm) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      const pieces = piecesOf(word, style, widthMm);
      lines.push(...pieces.slice(0, -1));
      line = pieces.at(-1) ?? '';
    }
    lines.push(line);
  }
  return lines.map((line) => line.replaceAll('\u00a0', ' '));
};
