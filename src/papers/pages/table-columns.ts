import { textWidthMm } from '../drawing/text-width.ts';
import { keepUnits } from '../lists/print-figure.ts';
import { cellText, headOf } from '../table/cell-text.ts';
import type { ListColumn, ListTable } from '../table/list-table.ts';
import { widestWordMm } from './set-lines.ts';
import { type TypeStyle, typeStyles } from './type-styles.ts';

/** Room between the words of one column and the next. */
export const gutterMm = 3;

const limitsMm = { word: 42, natural: 160, comfort: 30, tick: 9, blank: 24 } as const;

/** One printed column with its cells as text and what room it takes. */
export interface SetColumn {
  readonly column: ListColumn;
  readonly head: string;
  readonly cells: readonly string[];
  /** characters behind the point of its longest figure, the point with them: figures stand point under point */
  readonly fraction: number;
  readonly style: TypeStyle;
  /** there to be written in */
  readonly isBlank: boolean;
  /** so narrow that its widest word still fits */
  readonly leastMm: number;
  /** so wide that it reads well */
  readonly comfortMm: number;
  /** so wide that nothing is wrapped */
  readonly naturalMm: number;
  /** how long each cell is on one line */
  readonly cellsMm: readonly number[];
}

/** A figure in a column of figures; words there stand where they end. */
const isFigure = (cell: string): boolean => /^-?\d+(?:\.\d+)?$/.test(cell);

/** Characters behind the point of a figure, the point with them. */
const fractionOf = (cell: string): number =>
  isFigure(cell) && cell.includes('.') ? cell.length - cell.indexOf('.') : 0;

/** How far a figure is moved to the left so that its point stands under those of the others. */
export const pointShiftMm = (
  { column, style, fraction }: Pick<SetColumn, 'column' | 'style' | 'fraction'>,
  cell: string,
): number => (column.kind === 'figure' && isFigure(cell) ? (fraction - fractionOf(cell)) * textWidthMm('0', style) : 0);

const setColumn = (column: ListColumn, cells: readonly string[]): SetColumn => {
  const isMono = column.kind === 'label' || column.kind === 'figure';
  const style = isMono ? typeStyles.figure : typeStyles.cell;
  const head = headOf(column).replace(/\bmm2\b/, 'mm²');
  const fraction = column.kind === 'figure' ? Math.max(0, ...cells.map(fractionOf)) : 0;
  const isTick = column.kind === 'tick';
  const isBlank = column.kind === 'blank';
  const headMm = widestWordMm(head, typeStyles.head, limitsMm.word);
  const shiftOf = (cell: string): number => pointShiftMm({ column, style, fraction }, cell);
  const leastMm = Math.max(headMm, ...cells.map((cell) => widestWordMm(cell, style, limitsMm.word) + shiftOf(cell)));
  const cellsMm = cells.map(
    (cell) => Math.max(...cell.split('\n').map((line) => textWidthMm(line, style))) + shiftOf(cell),
  );
  const widestMm = Math.max(textWidthMm(head, typeStyles.head), ...cellsMm);
  const floorMm = isTick ? limitsMm.tick : isBlank ? limitsMm.blank * (column.share ?? 1) : 0;
  const naturalMm = Math.max(floorMm, Math.min(widestMm, limitsMm.natural));
  const wantedMm = isMono ? leastMm : Math.min(naturalMm, limitsMm.comfort * Math.min(column.share ?? 1, 2));
  return {
    column,
    head,
    cells,
    fraction,
    style,
    isBlank,
    leastMm: Math.max(leastMm, floorMm),
    comfortMm: Math.max(leastMm, floorMm, wantedMm),
    naturalMm: Math.max(naturalMm, leastMm, floorMm),
    cellsMm,
  };
};

/** A column nobody is to write in and in which nothing stands takes no room on paper. */
const isShown = ({ kind, printed }: ListColumn, cells: readonly string[]): boolean =>
  printed !== false && (kind === 'tick' || kind === 'blank' || cells.some((cell) => cell !== ''));

/** The columns of a table that are printed, each measured. */
export const setColumns = ({ columns, rows }: ListTable): SetColumn[] =>
  columns.flatMap((column, at) => {
    const cells = rows.map((row) => keepUnits(cellText(column, row[at])));
    return isShown(column, cells) ? [setColumn(column, cells)] : [];
  });

/** Tables of one kind, such as the settings of each unit, are set alike: by the columns they share. */
export const kindOf = ({ columns }: ListTable): string => columns.map(({ id, head }) => `${id} ${head}`).join(' | ');

/** For each kind of table of a chapter, its columns measured over all tables of that kind. */
export const kindsOf = (tables: readonly ListTable[]): ReadonlyMap<string, readonly SetColumn[]> => {
  const rows = new Map<string, ListTable>();
  for (const table of tables) {
    const known = rows.get(kindOf(table));
    rows.set(kindOf(table), known === undefined ? table : { ...known, rows: [...known.rows, ...table.rows] });
  }
  return new Map([...rows].map(([kind, all]) => [kind, setColumns(all)]));
};

/** The columns of one table out of those of its kind: as wide as theirs, with its own cells. */
export const ownColumns = (kind: readonly SetColumn[], { columns, rows }: ListTable): SetColumn[] =>
  kind.map((set) => {
    const at = columns.findIndex(({ id }) => id === set.column.id);
    return { ...set, cells: rows.map((row) => keepUnits(cellText(set.column, row[at]))) };
  });

/** What all columns of a table want together, the gutters between them with it. */
export const widthOf = (columns: readonly SetColumn[], mm: 'leastMm' | 'comfortMm' | 'naturalMm'): number =>
  columns.reduce((sum, column) => sum + column[mm] + gutterMm, -gutterMm);

/** Whether a table reads well on a page of this width: no column narrower than its words want. */
export const readsWell = (columns: readonly SetColumn[], widthMm: number): boolean =>
  widthOf(columns, 'comfortMm') <= widthMm;

/** A table too wide for the page in parts that fit, each begun with the column that names its rows. */
export const tableParts = (columns: readonly SetColumn[], widthMm: number): SetColumn[][] => {
  if (widthOf(columns, 'leastMm') <= widthMm) return [[...columns]];
  const keys = columns.slice(0, 1);
  const parts: SetColumn[][] = [];
  let part: SetColumn[] = [...keys];
  for (const column of columns.slice(keys.length)) {
    if (part.length > keys.length && widthOf([...part, column], 'comfortMm') > widthMm) {
      parts.push(part);
      part = [...keys];
    }
    part.push(column);
  }
  return [...parts, part];
};
