import fc from 'fast-check';
import readWorkbook from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { allowedInXml } from '../xml-text.ts';
import { cellText, headOf } from './cell-text.ts';
import type { ListTable } from './list-table.ts';
import { sheetName } from './sheet-name.ts';
import { tablesJson } from './tables-json.ts';
import { columnName, workbook } from './workbook.ts';

const cables: ListTable = {
  id: 'cables',
  title: 'Cable schedule',
  columns: [
    { id: 'label', head: 'label', kind: 'label' },
    { id: 'length', head: 'length', unit: 'm', kind: 'figure', digits: 2 },
    { id: 'remark', head: 'remark' },
  ],
  rows: [
    ['C07', 12.5, 'µ Ω ≤ "<fore & aft>"'],
    ['C08', undefined, '=1+1'],
  ],
  empty: 'No line is planned yet.',
};

const sheetsOf = (tables: readonly ListTable[]) => readWorkbook(Buffer.from(workbook(tables)));

test('another reader finds every sheet, words as words and figures as figures', async () => {
  const sheets = await sheetsOf([cables, { ...cables, id: 'other', title: 'Wire by wire: A/B' }]);
  expect(sheets.map(({ sheet }) => sheet)).toEqual(['Cable schedule', 'Wire by wire  A B']);
  expect(sheets[0]?.data).toEqual([
    ['label', 'length m', 'remark'],
    ['C07', 12.5, 'µ Ω ≤ "<fore & aft>"'],
    ['C08', null, '=1+1'],
  ]);
});

test('whatever words stand in a list come back letter for letter', async () => {
  const text = fc
    .string({ unit: 'grapheme', minLength: 1 })
    .filter((one) => one.trim() === one && allowedInXml(one) === one && !/\p{Cc}/u.test(one));
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(text, fc.double({ noNaN: true, noDefaultInfinity: true })), { minLength: 1, maxLength: 5 }),
      async (cells) => {
        const rows = cells.map(([words, figure]) => [words, figure === 0 ? 0 : figure, words]);
        const [sheet] = await sheetsOf([{ ...cables, rows }]);
        expect(sheet?.data.slice(1)).toEqual(rows);
      },
    ),
    { numRuns: 40 },
  );
});

test('equal lists give equal bytes', () => {
  expect(workbook([cables])).toEqual(workbook([structuredClone(cables)]));
});

test('no two sheets bear one name, and none a name that a workbook forbids', () => {
  const tables = ['a/b', 'A B', 'x'.repeat(40)].map((title, at) => ({ ...cables, id: `list-${at}`, title }));
  expect(tables.map((table) => sheetName(table, tables))).toEqual(['list-0', 'list-1', 'x'.repeat(31)]);
});

test('columns are named by letters', () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(columnName)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
});

test('a figure is printed with the digits of its column, else with two at most', () => {
  const column = { id: 'x', head: 'length', unit: 'm', kind: 'figure' } as const;
  expect(headOf(column)).toBe('length m');
  expect(cellText({ ...column, digits: 2 }, 3)).toBe('3.00');
  expect([3, 2.456, undefined].map((cell) => cellText(column, cell))).toEqual(['3', '2.46', '']);
});

test('the lists as JSON name every cell by its column, and leave out what is empty', () => {
  expect(JSON.parse(tablesJson([cables]))).toEqual({
    cables: {
      title: 'Cable schedule',
      columns: [
        { id: 'label', head: 'label' },
        { id: 'length', head: 'length', unit: 'm' },
        { id: 'remark', head: 'remark' },
      ],
      rows: [
        { label: 'C07', length: 12.5, remark: 'µ Ω ≤ "<fore & aft>"' },
        { label: 'C08', remark: '=1+1' },
      ],
    },
  });
});
