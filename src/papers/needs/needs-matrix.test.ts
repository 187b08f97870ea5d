import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { applyEdits } from '../../core/boat/history.ts';
import { startHistory } from '../../core/boat/start-history.ts';
import { plan } from '../../core/plan.ts';
import { cellChange, cellState, cellWords } from './cell-words.ts';
import { askOf, fillCells, nextAsk } from './fill-cells.ts';
import { type NeedsCell, needsMatrix } from './needs-matrix.ts';

const matrixOf = (boat: Boat) => needsMatrix({ boat, plan: plan(boat, new Map()) });

const cellOf = (boat: Boat, row: string, unit: string): NeedsCell => {
  const found = matrixOf(boat)
    .rows.find(({ key }) => key === row)
    ?.cells.find((cell) => cell.unit === unit);
  if (found === undefined) throw new Error(`no cell ${row} at ${unit}`);
  return found;
};

test('readings stand down, screens and what is told something across', () => {
  const { columns, rows, others } = matrixOf(aBoat().boat);
  expect(columns.map(({ unit }) => unit)).toEqual(['display', 'radio']);
  expect(rows.map(({ name }) => name)).toEqual(['position', 'heading']);
  expect(others.map(({ reading }) => reading)).toContain('depth');
  expect(rows.length + others.length).toBe(41);
});

test('a cell says whether it is a must, whether it arrives and what the refit changes', () => {
  const { boat } = aBoat();
  expect(cellWords(cellOf(boat, 'position ', 'radio'))).toBe('a must, arrives, new with the refit');
  expect(cellWords(cellOf(boat, 'heading ', 'radio'))).toBe('not wanted');
});

test('what was there and is gone is told from what never was', () => {
  const boat = aBoat()
    .unit('gnss', { fate: 'goes' })
    .unit('display', { fate: 'stays' })
    .unit('converter', { fate: 'stays' }).boat;
  const lost = cellOf(boat, 'position ', 'display');
  expect([cellState(lost), cellChange(lost)]).toEqual(['missing', 'lost']);
  const never = cellOf(boat, 'heading ', 'display');
  expect([cellState(never), cellChange(never)]).toEqual(['arrives', 'new']);
});

test('pressed on and on, a cell goes from nothing over must and wish back to nothing', () => {
  let history = startHistory(aBoat().boat);
  const seen: string[] = [];
  for (let press = 0; press < 3; press += 1) {
    const cell = cellOf(history.boat, 'heading ', 'radio');
    const row = { reading: 'heading' } as const;
    const { edits, says } = fillCells([{ row, cell }], nextAsk(cell));
    history = applyEdits(history, edits, says);
    seen.push(`${askOf(cellOf(history.boat, 'heading ', 'radio'))}: ${history.done.at(-1)?.title}`);
  }
  expect(seen).toEqual([
    'must: Heading must be seen.',
    'wish: Heading had better be seen.',
    'none: Heading no longer wanted.',
  ]);
  expect(history.boat).toEqual(aBoat().boat);
});

test('many cells are filled as one step, and those that ask for it already are left alone', () => {
  const { boat } = aBoat();
  const row = { reading: 'position' } as const;
  const cells = ['display', 'radio'].map((unit) => ({ row, cell: cellOf(boat, 'position ', unit) }));
  expect(fillCells(cells, 'must').edits).toEqual([]);
  const { edits, says } = fillCells(cells, 'none');
  expect(edits).toHaveLength(2);
  expect(says).toBe('Position no longer wanted at 2 places.');
});

test('a wish keeps how often and in which reference it was asked for', () => {
  const boat = aBoat().with({
    needs: [{ reading: 'heading', at: 'display', must: true, everyMs: 100, reference: 'magnetic' }],
  }).boat;
  const cell = cellOf(boat, 'heading ', 'display');
  expect(fillCells([{ row: { reading: 'heading' }, cell }], 'wish').edits).toEqual([
    {
      edit: 'change-need',
      params: { reading: 'heading', at: 'display', must: false, everyMs: 100, reference: 'magnetic' },
    },
  ]);
});

test('engines are rows of their own, and a row somebody opened stays until it is filled', () => {
  const boat = aBoat().with({
    needs: [
      { reading: 'engine', instance: 1, at: 'display', must: true },
      { reading: 'engine', instance: 0, at: 'display', must: true },
    ],
  }).boat;
  const { rows } = needsMatrix({ boat, plan: plan(boat, new Map()) }, [{ reading: 'engine', instance: 2 }]);
  expect(rows.map(({ name, isNumbered }) => [name, isNumbered])).toEqual([
    ['engine 0', true],
    ['engine 1', true],
    ['engine 2', true],
  ]);
});
