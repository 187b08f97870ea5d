import type { CellsToPut } from '../../../papers/tables/put-cells.ts';
import type { BoatTable, TableRow } from '../../../papers/tables/table-shape.ts';
import type { GridPlace, GridRange } from './grid-place.ts';
import { inOrder } from './grid-place.ts';

/** The columns that pasted cells go to: those the first row names, else those from the cell one is at. */
const columnsOf = (
  { columns }: BoatTable,
  first: readonly string[],
  at: GridPlace,
): { readonly ids: readonly (string | undefined)[]; readonly isHead: boolean } => {
  const idOf = new Map(columns.map(({ id, says }) => [says.toLowerCase(), id]));
  const named = first.map((cell) => idOf.get(cell.trim().toLowerCase()));
  const isHead = first.length > 1 && named.every((id) => id !== undefined);
  return isHead ? { ids: named, isHead } : { ids: columns.slice(at.column).map(({ id }) => id), isHead };
};

/**
 * Where pasted cells go: over the rows from the one that one is at, and below the last as new rows. One cell alone fills
 * all cells that are marked. A first row of the heads of columns says which is which.
 */
export const pastedCells = (
  table: BoatTable,
  {
    rows,
    marked,
    pasted,
  }: {
    /** the rows as they are shown */
    readonly rows: readonly TableRow[];
    readonly marked: GridRange;
    readonly pasted: readonly (readonly string[])[];
  },
): CellsToPut => {
  const { from, to } = inOrder(marked);
  const [[single] = []] = pasted;
  if (pasted.length === 1 && pasted[0]?.length === 1 && single !== undefined && to.row < rows.length) {
    const filled = rows
      .slice(from.row, to.row + 1)
      .flatMap(({ id }) =>
        table.columns.slice(from.column, to.column + 1).map((column) => ({ row: id, column: column.id, text: single })),
      );
    return { cells: filled };
  }
  const { ids, isHead } = columnsOf(table, pasted[0] ?? [], from);
  const lines = isHead ? pasted.slice(1) : pasted;
  // a table that is pasted with its heads is a list of new rows wherever one is at
  const start = isHead ? rows.length : from.row;
  const over = rows.slice(start, start + lines.length);
  const textsOf = (line: readonly string[]): [string, string][] =>
    line.flatMap((text, at) => {
      const id = ids[at];
      return id === undefined ? [] : [[id, text] as [string, string]];
    });
  return {
    cells: over.flatMap(({ id }, at) => textsOf(lines[at] ?? []).map(([column, text]) => ({ row: id, column, text }))),
    newRows: lines.slice(over.length).map((line) => Object.fromEntries(textsOf(line))),
  };
};
