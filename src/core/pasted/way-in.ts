import type { PastedWay } from './pasted-shape.ts';

const sends = /\b(tx|transmit(s|ted|ting)?|sends?|sent|outputs?|out|talk(s|er)?|transmission)\b/i;
const hears = /\b(rx|recei?v(e|es|ed|ing)|hears?|heard|inputs?|in|listen(s|er|ing)?|accept(s|ed)?|reception)\b/i;
/** Words that mean a way only as headings, not inside a sentence of the text. */
const smallWords = /\b(in|out)\b/i;
const both = /\b(tx\/rx|rx\/tx|t\/r|r\/t|in\/out|i\/o|both)\b/i;

/** One cell that says nothing but a way: "Tx", "R", "T/R". */
const cellWay: ReadonlyMap<string, PastedWay> = new Map<string, PastedWay>([
  ['t', 'sends'],
  ['tx', 'sends'],
  ['out', 'sends'],
  ['r', 'hears'],
  ['rx', 'hears'],
  ['in', 'hears'],
  ['t/r', 'both'],
  ['r/t', 'both'],
  ['tx/rx', 'both'],
  ['rx/tx', 'both'],
  ['i/o', 'both'],
  ['in/out', 'both'],
  ['both', 'both'],
]);

/** One cell of a row with where it begins. */
export interface Cell {
  readonly text: string;
  readonly at: number;
}

/** A line with one of these in it is parted by it, and then an empty cell counts as well. */
const rules = ['\t', '|'];

/** The cells of a line: parted by tabs or bars, else by several spaces. */
export const cellsOf = (line: string): readonly Cell[] => {
  const rule = rules.find((one) => line.includes(one));
  const cells: Cell[] = [];
  let at = 0;
  for (const text of line.split(rule ?? / {2,}/)) {
    const start = rule === undefined ? line.indexOf(text, at) : at;
    if (rule !== undefined || text.trim() !== '') cells.push({ text: text.trim(), at: start });
    at = start + text.length + (rule === undefined ? 0 : 1);
  }
  return cells;
};

/** The way that words say; undefined where they say none. */
export const wayIn = (text: string): PastedWay | undefined => {
  const cell = cellWay.get(text.trim().toLowerCase());
  if (cell !== undefined) return cell;
  if (both.test(text)) return 'both';
  // "in" and "out" are everyday words: they count with a colon after them only
  const plain = smallWords.test(text) && !/:\s*$/.test(text) ? text.replace(/\b(in|out)\b/gi, ' ') : text;
  const [isSent, isHeard] = [sends.test(plain), hears.test(plain)];
  if (isSent && isHeard) return 'both';
  if (isSent) return 'sends';
  return isHeard ? 'hears' : undefined;
};

/** Whether a line says nothing but a way, in the short form of a cell. */
export const isBareWay = (line: string): boolean => cellWay.has(line.trim().toLowerCase());

/** The columns of a table in which marks say whether a message is sent and heard. */
export interface WayColumns {
  readonly isRuled: boolean;
  readonly sends: { readonly index: number; readonly at: number };
  readonly hears: { readonly index: number; readonly at: number };
}

/** The two columns where a line heads them; undefined where it does not. */
export const wayColumns = (line: string): WayColumns | undefined => {
  const cells = cellsOf(line);
  const columnOf = (way: PastedWay) => {
    const index = cells.findIndex(({ text }) => wayIn(text) === way);
    const cell = cells[index];
    return cell === undefined ? undefined : { index, at: cell.at };
  };
  const [sent, heard] = [columnOf('sends'), columnOf('hears')];
  return sent === undefined || heard === undefined
    ? undefined
    : { isRuled: rules.some((rule) => line.includes(rule)), sends: sent, hears: heard };
};

const yes = /^(x|y|yes|✓|✔|√|•|●|■|o|1|✗x|\+|●+)$/i;

const wayOfMarks = (isSent: boolean, isHeard: boolean): PastedWay | undefined => {
  if (isSent) return isHeard ? 'both' : 'sends';
  return isHeard ? 'hears' : undefined;
};

/** What the marks of a row say under the columns of its table. */
export const wayByColumns = (line: string, columns: WayColumns): PastedWay | undefined => {
  const cells = cellsOf(line);
  if (columns.isRuled) {
    const isMarked = (index: number): boolean => yes.test(cells[index]?.text ?? '');
    return wayOfMarks(isMarked(columns.sends.index), isMarked(columns.hears.index));
  }
  const marks = cells.filter(({ text }) => yes.test(text));
  const isNearer = (at: number, to: 'sends' | 'hears', other: 'sends' | 'hears'): boolean =>
    Math.abs(at - columns[to].at) < Math.abs(at - columns[other].at);
  return wayOfMarks(
    marks.some(({ at }) => isNearer(at, 'sends', 'hears')),
    marks.some(({ at }) => isNearer(at, 'hears', 'sends')),
  );
};
