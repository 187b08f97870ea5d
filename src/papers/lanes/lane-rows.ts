import { textWidthMm } from '../drawing/text-width.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import type { DrawnBoat } from '../sheet/drawn-boat.ts';
import { isConverter, languagesOf } from '../sheet/languages-of.ts';
import { stripWords } from '../sheet/strip-words.ts';
import type { LaneUnit } from './lane-tree.ts';

/** Sizes of a row: from one to the next, of its balloon, how far what hangs on a unit stands to the right of it. */
export const laneRowMm = 7.2;
export const laneRadiusMm = 2.6;
export const laneIndentMm = 10.6;

/** A converter's square stands before its balloon. */
export const squareMm = 5.2;
const wordsGapMm = 1.3;

/** One unit on a line of its own, as an outline is written: what hangs on it follows, one step to the right. */
export interface LaneRow {
  readonly unit: LaneUnit;
  /** row and x of what it hangs on, from the start of the outline; absent for the first */
  readonly parent?: number;
  readonly row: number;
  readonly xMm: number;
  readonly square: boolean;
  readonly words: readonly string[];
}

export interface Outline {
  readonly rows: readonly LaneRow[];
  /** from the middle of the first balloon to the end of the longest words */
  readonly widthMm: number;
}

/** The name of a unit; of a converter also its two languages, where the name does not say them. */
const wordsOf = ({ mark, again }: LaneUnit, index: DrawnBoat): string => {
  const sheet = index.sheetOf.get(mark.kit.id);
  if (again || sheet === undefined || !isConverter(sheet)) return mark.label;
  const languages = languagesOf(sheet).join('/');
  return mark.label.includes(languages) ? mark.label : `${mark.label}: ${languages}`;
};

/** Where the words of a row begin, from the middle of its first mark. */
export const wordsXMm = ({ square }: Pick<LaneRow, 'square'>): number =>
  laneRadiusMm + (square ? squareMm + 0.4 : 0) + wordsGapMm;

/** Words in one line, or in two where `roomMm` is short. */
const linesOf = (words: string, roomMm: number): readonly string[] => {
  const lines = wrapText(words, stripWords, roomMm);
  return lines === undefined || lines.length > 2 ? [] : lines;
};

/** A unit and all that hangs on it, a row each, as wide as `roomMm` at the most. */
export const outlineOf = (head: LaneUnit, index: DrawnBoat, roomMm = Number.POSITIVE_INFINITY): Outline => {
  const rows: LaneRow[] = [];
  const write = (unit: LaneUnit, depth: number, parent: number | undefined): void => {
    const row = rows.length;
    const square = !unit.again && isConverter(index.sheetOf.get(unit.mark.kit.id));
    const xMm = depth * laneIndentMm;
    const words = linesOf(wordsOf(unit, index), roomMm - xMm - wordsXMm({ square }));
    rows.push({ unit, row, xMm, square, words, ...(parent === undefined ? {} : { parent }) });
    for (const one of unit.hangs) write(one, depth + 1, row);
  };
  write(head, 0, undefined);
  const ends = rows.map(
    (row) => row.xMm + wordsXMm(row) + Math.max(0, ...row.words.map((line) => textWidthMm(line, stripWords))),
  );
  return { rows, widthMm: Math.max(...ends) };
};
