/**
 * Solves a few linear equations by elimination, the largest pivot first; undefined where they do not decide every unknown.
 *
 * @example solveEquations([[2, 0], [0, 4]], [2, 8]) // [1, 2]
 */
export const solveEquations = (
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | undefined => {
  const size = matrix.length;
  const rows = matrix.map((row, at) => [...row, right[at] ?? 0]);
  for (let column = 0; column < size; column += 1) {
    const rest = rows.slice(column);
    const largest = Math.max(...rest.map((row) => Math.abs(row[column] ?? 0)));
    if (largest < 1e-9) return undefined;
    const pivotAt = column + rest.findIndex((row) => Math.abs(row[column] ?? 0) === largest);
    const pivot = rows[pivotAt] ?? [];
    rows[pivotAt] = rows[column] ?? [];
    const scale = pivot[column] ?? 1;
    rows[column] = pivot.map((value) => value / scale);
    for (const [at, row] of rows.entries()) {
      const factor = row[column] ?? 0;
      if (at !== column && factor !== 0) {
        rows[at] = row.map((value, place) => value - factor * (rows[column]?.[place] ?? 0));
      }
    }
  }
  return rows.map((row) => row[size] ?? 0);
};
