import { byCodeUnit } from '../../../core/units/by-code-unit.ts';
import type { TableRow } from '../../../papers/tables/table-shape.ts';

/** By which column rows are sorted, and which end comes first. */
export interface GridSort {
  readonly column: string;
  readonly isDown: boolean;
}

const compare = (a: TableRow, b: TableRow, column: string): number => {
  const [one, other] = [a.sortsBy?.[column], b.sortsBy?.[column]];
  if (one !== undefined && other !== undefined) return one - other;
  return byCodeUnit((a.cells[column] ?? '').toLowerCase(), (b.cells[column] ?? '').toLowerCase());
};

/** The rows that hold every word of a text somewhere, sorted; rows that are alike stay in the order they came. */
export const shownRows = (rows: readonly TableRow[], text: string, sort: GridSort | undefined): readonly TableRow[] => {
  const asked = text.toLowerCase().split(/\s+/).filter(Boolean);
  const found = rows.filter(({ cells }) => {
    const all = Object.values(cells).join('\n').toLowerCase();
    return asked.every((word) => all.includes(word));
  });
  if (sort === undefined) return found;
  const way = sort.isDown ? -1 : 1;
  return [...found].sort((a, b) => way * compare(a, b, sort.column));
};

/** What a press on the head of a column sorts by: it up, then it down, then the order of the boat file again. */
export const nextSort = (sort: GridSort | undefined, column: string): GridSort | undefined => {
  if (sort?.column !== column) return { column, isDown: false };
  return sort.isDown ? undefined : { column, isDown: true };
};
