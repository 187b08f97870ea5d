/** One cell of a grid, counted from the first of each. */
export interface GridPlace {
  readonly row: number;
  readonly column: number;
}

/** The cells between two corners, both with them. */
export interface GridRange {
  readonly from: GridPlace;
  readonly to: GridPlace;
}

const within = (value: number, count: number): number => Math.max(0, Math.min(count - 1, value));

/** Where a key leads from a cell, at the edges no further; undefined for a key that leads nowhere. */
export const placeByKey = (
  at: GridPlace,
  press: { readonly key: string; readonly ctrlKey: boolean; readonly metaKey: boolean },
  size: { readonly rows: number; readonly columns: number },
): GridPlace | undefined => {
  const isFar = press.ctrlKey || press.metaKey;
  const by = (rows: number, columns: number): GridPlace => ({
    row: isFar && rows !== 0 ? (rows < 0 ? 0 : size.rows - 1) : within(at.row + rows, size.rows),
    column: isFar && columns !== 0 ? (columns < 0 ? 0 : size.columns - 1) : within(at.column + columns, size.columns),
  });
  switch (press.key) {
    case 'ArrowLeft':
      return by(0, -1);
    case 'ArrowRight':
      return by(0, 1);
    case 'ArrowUp':
      return by(-1, 0);
    case 'ArrowDown':
      return by(1, 0);
    case 'PageUp':
      return { ...at, row: within(at.row - 10, size.rows) };
    case 'PageDown':
      return { ...at, row: within(at.row + 10, size.rows) };
    case 'Home':
      return { row: isFar ? 0 : at.row, column: 0 };
    case 'End':
      return { row: isFar ? size.rows - 1 : at.row, column: size.columns - 1 };
    default:
      return undefined;
  }
};

/** The same cells from the upper left corner to the lower right one. */
export const inOrder = ({ from, to }: GridRange): GridRange => ({
  from: { row: Math.min(from.row, to.row), column: Math.min(from.column, to.column) },
  to: { row: Math.max(from.row, to.row), column: Math.max(from.column, to.column) },
});

/** Whether a cell is in a range. */
export const isInRange = (range: GridRange, { row, column }: GridPlace): boolean => {
  const { from, to } = inOrder(range);
  return row >= from.row && row <= to.row && column >= from.column && column <= to.column;
};
