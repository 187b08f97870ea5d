import { expect, test } from 'vitest';
import type { BoatTable } from '../../../papers/tables/table-shape.ts';
import { pastedCells } from './pasted-cells.ts';

const table: BoatTable = {
  id: 'kit',
  says: 'kit',
  columns: [
    { id: 'name', says: 'unit' },
    { id: 'fate', says: 'fate' },
    { id: 'place', says: 'place' },
  ],
  rowsOf: () => [],
  put: () => ({ edits: [] }),
};
const rows = ['radar', 'radio'].map((id) => ({ id, cells: {} }));
const at = (row: number, column: number) => ({ from: { row, column }, to: { row, column } });

test('cells go over those from the one that one is at, and below the last row as new ones', () => {
  const pasted = [
    ['goes', 'mast'],
    ['stays', 'helm'],
  ];
  expect(pastedCells(table, { rows, marked: at(1, 1), pasted })).toEqual({
    cells: [
      { row: 'radio', column: 'fate', text: 'goes' },
      { row: 'radio', column: 'place', text: 'mast' },
    ],
    newRows: [{ fate: 'stays', place: 'helm' }],
  });
});

test('one cell fills all that are marked', () => {
  const marked = { from: { row: 1, column: 1 }, to: { row: 0, column: 1 } };
  expect(pastedCells(table, { rows, marked, pasted: [['goes']] }).cells).toEqual([
    { row: 'radar', column: 'fate', text: 'goes' },
    { row: 'radio', column: 'fate', text: 'goes' },
  ]);
});

test('a first row of heads says which column is which, and all below is new', () => {
  const pasted = [
    ['Place', 'Unit'],
    ['helm', 'screen'],
  ];
  expect(pastedCells(table, { rows, marked: at(0, 0), pasted })).toEqual({
    cells: [],
    newRows: [{ place: 'helm', name: 'screen' }],
  });
});

test('cells past the last column go nowhere', () => {
  const { cells } = pastedCells(table, { rows, marked: at(0, 2), pasted: [['helm', 'more', 'words']] });
  expect(cells).toEqual([{ row: 'radar', column: 'place', text: 'helm' }]);
});
