import type { Ink, Shape, TextShape } from '../drawing/shapes.ts';
import { type TextStyle, textWidthMm } from '../drawing/text-width.ts';
import { sheetLineMm, sheetLines, sheetText } from './sheet-text.ts';

/** A paragraph of a column: a heading, or words with a key such as a label in front of them. */
export interface FlowPart {
  readonly look: 'head' | 'name' | 'plain' | 'quiet' | 'caution';
  readonly text: string;
  /** stands in a narrow column of its own in front of the words */
  readonly key?: string;
  /** for a key */
  readonly keyMm?: number;
  /** begins a thing of its own: a little air before it, and never the last of a column where more belongs to it */
  readonly withNext?: boolean;
  readonly about?: readonly string[];
}

/** Room for the widest of the keys that stand under each other. */
export const keyColumnMm = (keys: readonly string[]): number =>
  Math.max(6, ...keys.map((key) => textWidthMm(key, sheetText.label))) + 1.8;

/** A paragraph broken into lines for a column of one width. */
interface SetPart {
  readonly part: FlowPart;
  readonly lines: readonly string[];
  readonly heightMm: number;
}

const styleOf = ({ look }: FlowPart): TextStyle =>
  look === 'head' ? sheetText.head : look === 'name' || look === 'caution' ? sheetText.name : sheetText.plain;

const inkOf = ({ look }: FlowPart): Ink => (look === 'quiet' ? 'quiet' : 'ink');

/** Air over a part. */
const airMm = ({ look, withNext }: FlowPart): number => (look === 'head' ? 2.4 : withNext === true ? 1.2 : 0.3);

const setPart = (part: FlowPart, widthMm: number): SetPart => {
  const indentMm = part.key === undefined ? 0 : (part.keyMm ?? 12);
  const lines = sheetLines(part.text, styleOf(part), widthMm - indentMm);
  return { part, lines, heightMm: airMm(part) + Math.max(1, lines.length) * sheetLineMm };
};

/** Where columns of text stand, and how high they may be. */
export interface FlowRoom {
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly columns: number;
}

const gutterMm = 6;

export const columnMm = ({ widthMm, columns }: Pick<FlowRoom, 'widthMm' | 'columns'>): number =>
  (widthMm - gutterMm * (columns - 1)) / columns;

const partShapes = ({ part, lines }: SetPart, leftMm: number, topMm: number): Shape[] => {
  const indentMm = part.key === undefined ? 0 : (part.keyMm ?? 12);
  const baseMm = topMm + airMm(part) + 2.5;
  const about = part.about === undefined ? {} : { about: part.about };
  const words = lines.map(
    (text, at): TextShape => ({
      kind: 'text',
      xMm: leftMm + indentMm,
      yMm: baseMm + at * sheetLineMm,
      text,
      ...styleOf(part),
      ink: inkOf(part),
      ...about,
    }),
  );
  if (part.key === undefined) return words;
  return [
    { kind: 'text', xMm: leftMm, yMm: baseMm, text: part.key, ...sheetText.label, ink: 'ink', ...about },
    ...words,
  ];
};

/** Parts that stay together: each with what it must not be parted from. */
const clumps = (parts: readonly SetPart[]): SetPart[][] => {
  const all: SetPart[][] = [];
  let open: SetPart[] = [];
  for (const part of parts) {
    open.push(part);
    if (part.part.withNext === true || part.part.look === 'head') continue;
    all.push(open);
    open = [];
  }
  return open.length === 0 ? all : [...all, open];
};

/** Fills columns from left to right, then pages; a heading stays with what follows it. */
export const textFlow = (parts: readonly FlowPart[], room: FlowRoom): Shape[][] => {
  const widthMm = columnMm(room);
  const pages: Shape[][] = [[]];
  let column = 0;
  let atMm = 0;
  for (const clump of clumps(parts.map((part) => setPart(part, widthMm)))) {
    const heightMm = clump.reduce((sum, { heightMm: own }) => sum + own, 0);
    if (atMm > 0 && atMm + heightMm > room.heightMm) {
      atMm = 0;
      column += 1;
      if (column === room.columns) {
        column = 0;
        pages.push([]);
      }
    }
    for (const part of clump) {
      const leftMm = room.leftMm + column * (widthMm + gutterMm);
      pages.at(-1)?.push(...partShapes(part, leftMm, room.topMm + atMm));
      atMm += part.heightMm;
    }
  }
  return pages;
};
