import { expect, test } from 'vitest';
import type { TableRow } from '../../../papers/tables/table-shape.ts';
import { nextSort, shownRows } from './shown-rows.ts';

const row = (id: string, length: number): TableRow => ({
  id,
  cells: { name: id, length: `${length} m` },
  sortsBy: { length },
});
const rows = [row('Mast', 12), row('helm', 2.5), row('Aft helm', 9)];
const ids = (text: string, sort?: Parameters<typeof shownRows>[2]) => shownRows(rows, text, sort).map(({ id }) => id);

test('a row is found by words of any of its cells', () => {
  expect(ids('helm')).toEqual(['helm', 'Aft helm']);
  expect(ids('helm 9')).toEqual(['Aft helm']);
  expect(ids('keel')).toEqual([]);
});

test('figures sort by what they are, words without regard to capitals', () => {
  expect(ids('', { column: 'length', isDown: false })).toEqual(['helm', 'Aft helm', 'Mast']);
  expect(ids('', { column: 'length', isDown: true })).toEqual(['Mast', 'Aft helm', 'helm']);
  expect(ids('', { column: 'name', isDown: false })).toEqual(['Aft helm', 'helm', 'Mast']);
});

test('a head pressed three times is the order of the boat again', () => {
  const once = nextSort(undefined, 'name');
  const twice = nextSort(once, 'name');
  expect([once?.isDown, twice?.isDown, nextSort(twice, 'name')]).toEqual([false, true, undefined]);
  expect(nextSort(twice, 'length')).toEqual({ column: 'length', isDown: false });
});
