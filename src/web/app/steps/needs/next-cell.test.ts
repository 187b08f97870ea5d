import { expect, test } from 'vitest';
import { nextCell } from './next-cell.ts';

const size = { rows: 3, columns: 2 };

test('arrows move one cell and stop at the edge', () => {
  expect(nextCell({ row: 0, column: 0 }, 'ArrowDown', size)).toEqual({ row: 1, column: 0 });
  expect(nextCell({ row: 2, column: 1 }, 'ArrowDown', size)).toEqual({ row: 2, column: 1 });
  expect(nextCell({ row: 0, column: 0 }, 'ArrowLeft', size)).toEqual({ row: 0, column: 0 });
});

test('home and end go to the ends of the row, and other keys go nowhere', () => {
  expect(nextCell({ row: 1, column: 0 }, 'End', size)).toEqual({ row: 1, column: 1 });
  expect(nextCell({ row: 1, column: 1 }, 'Home', size)).toEqual({ row: 1, column: 0 });
  expect(nextCell({ row: 1, column: 1 }, 'm', size)).toBeUndefined();
});
