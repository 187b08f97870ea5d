import { type SetColumn, widthOf } from './table-columns.ts';

/** What is given to one column at a time. */
const stepMm = 1;

/** Tall cells weigh much more than low ones, to the fourth power: the tallest of a row makes its height. */
const weightOf = (lines: number): number => {
  if (lines <= 1) return 1;
  const square = lines * lines;
  return square * square;
};

/** What a table that has room to spare gives it to: what is written in; else it is narrower than the page. */
const spread = (columns: readonly SetColumn[], widthMm: number): number[] => {
  const spareMm = widthMm - widthOf(columns, 'naturalMm');
  const blanks = columns.filter(({ isBlank }) => isBlank);
  const each = blanks.length === 0 ? 0 : spareMm / blanks.length;
  return columns.map((column) => column.naturalMm + (column.isBlank ? each : 0));
};

/** How tall the cells of a column stand at a width: the weight of each, added up. */
const tallness = ({ cellsMm }: SetColumn, widthMm: number): number =>
  cellsMm.reduce((sum, cellMm) => sum + weightOf(cellMm / widthMm), 0);

interface Growing {
  readonly column: SetColumn;
  widthMm: number;
  tall: number;
  /** how much lower its cells become with one step more */
  gain: number;
}

const gainOf = (column: SetColumn, widthMm: number, tall: number): number =>
  widthMm >= column.naturalMm ? 0 : tall - tallness(column, widthMm + stepMm);

const begun = (column: SetColumn): Growing => {
  const tall = tallness(column, column.leastMm);
  return { column, widthMm: column.leastMm, tall, gain: gainOf(column, column.leastMm, tall) };
};

/**
 * The width of each column. Where there is room for all of them none is wrapped. Else each begins as narrow as its widest word
 * lets it, and what is left goes step by step to the column that becomes lower by it most; as the sum is convex, no other
 * sharing of the same steps gives a smaller one. Rows so come out low, and no column stands one word a line beside a wide one.
 */
export const columnWidths = (columns: readonly SetColumn[], widthMm: number): number[] => {
  if (widthOf(columns, 'naturalMm') <= widthMm) return spread(columns, widthMm);
  const growing = columns.map(begun);
  let spareMm = widthMm - widthOf(columns, 'leastMm');
  while (spareMm >= stepMm) {
    const next = growing.reduce((best, one) => (one.gain > best.gain ? one : best));
    if (next.gain <= 0) break;
    next.widthMm += stepMm;
    next.tall -= next.gain;
    next.gain = gainOf(next.column, next.widthMm, next.tall);
    spareMm -= stepMm;
  }
  return growing.map((one) => one.widthMm);
};
