import { describe, expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { applyEdits } from '../../core/boat/history.ts';
import { startHistory } from '../../core/boat/start-history.ts';
import { plan } from '../../core/plan.ts';
import { orderTable } from './order-table.ts';
import { putCells } from './put-cells.ts';

const tern = aBoat().boat;
const planned = plan(tern, new Map());
const [first] = planned.shopping;
const item = first?.id ?? '';
const table = orderTable(tern, planned);

const filled = (boat: Boat, cells: Readonly<Record<string, string>>): Boat => {
  const put = Object.entries(cells).map(([column, text]) => ({ row: item, column, text }));
  const { edits, wrong } = putCells(table, boat, { cells: put });
  expect(wrong).toEqual([]);
  return applyEdits(startHistory(boat), edits).boat;
};
const wrongOf = (column: string, text: string): string =>
  putCells(table, tern, { cells: [{ row: item, column, text }] }).wrong[0]?.says ?? '';
const cellsOf = (boat: Boat) => table.rowsOf(boat).find(({ id }) => id === item)?.cells;

describe('the table of the order', () => {
  test('has a row for each item of the plan', () => {
    expect(table.rowsOf(tern).map(({ id }) => id)).toEqual(planned.shopping.map(({ id }) => id));
  });

  test('takes several cells of one row in one step, and shows them', () => {
    const after = filled(tern, {
      state: 'ordered',
      supplier: 'the chandler',
      leadDays: '14 days',
      orderBy: '2027-03-31',
    });
    expect(after.orders).toEqual([
      { item, state: 'ordered', supplier: 'the chandler', leadDays: 14, orderBy: '2027-03-31' },
    ]);
    expect(cellsOf(after)).toMatchObject({ state: 'ordered', supplier: 'the chandler', leadDays: '14' });
  });

  test('an emptied cell is no longer said, and the count of the plan is nobody’s own', () => {
    const told = filled(tern, { leadDays: '14', count: '7' });
    expect(told.orders?.[0]).toMatchObject({ leadDays: 14, count: 7 });
    const after = filled(told, { leadDays: '', count: String(first?.count) });
    expect(after.orders).toEqual([{ item, state: 'order' }]);
  });

  test('a price is one’s own until it is emptied', () => {
    const told = filled(tern, { each: '23.5' });
    expect(told.prices?.items).toEqual({ [item]: 2350 });
    expect(cellsOf(told)?.each).toBe('23.50');
    expect(filled(told, { each: '' }).prices?.items).toBeUndefined();
  });

  test('says what is wrong with a day, a number and a state', () => {
    expect(wrongOf('orderBy', 'next week')).toContain('2027-03-31');
    expect(wrongOf('leadDays', 'soon')).toContain('0 to 2000');
    expect(wrongOf('state', 'lost')).toContain('at hand');
    expect(wrongOf('item', 'another')).toContain('aboard');
  });
});
