/** A cell of a table by row and column, from 0. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

const within = (value: number, count: number): number => Math.max(0, Math.min(count - 1, value));

/** Where the keyboard goes from a cell when a key is pressed; undefined when the key is not for moving. */
export const nextCell = (
  { row, column }: CellPlace,
  key: string,
  { rows, columns }: { readonly rows: number; readonly columns: number },
): CellPlace | undefined => {
  switch (key) {
    case 'ArrowRight':
      return { row, column: within(column + 1, columns) };
    case 'ArrowLeft':
      return { row, column: within(column - 1, columns) };
    case 'ArrowDown':
      return { row: within(row + 1, rows), column };
    case 'ArrowUp':
      return { row: within(row - 1, rows), column };
    case 'Home':
      return { row, column: 0 };
    case 'End':
      return { row, column: columns - 1 };
    default:
      return undefined;
  }
};
