import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvCell, csvText } from './csv.ts';

/** Reads CSV back by RFC 4180, section 2. */
const readCsv = (text: string): string[][] => {
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    row.push(quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'));
    if (end === '\r\n') {
      rows.push(row);
      row = [];
    }
  }
  return rows;
};

test('RFC 4180 section 2: commas, quotes and line ends are quoted, quotes doubled, lines end with CR LF', () => {
  expect(
    csvText([
      ['aaa', 'b "b" b', 'c,c'],
      ['1', 'two\r\nlines', ''],
    ]),
  ).toBe('aaa,"b ""b"" b","c,c"\r\n1,"two\r\nlines",\r\n');
});

test.each(['=1+2', '+49', '-3', '@x', '\tx', '\rx'])('a spreadsheet never runs %j as a formula', (text) => {
  expect(csvCell(text).replace(/^"/, '').startsWith("'")).toBe(true);
});

test('whatever stands in the cells can be read back', () => {
  const cell = fc.string({ maxLength: 12 }).filter((text) => !/^[=+\-@\t\r]/.test(text));
  fc.assert(
    fc.property(fc.array(fc.array(cell, { minLength: 1, maxLength: 4 }), { maxLength: 5 }), (rows) => {
      expect(readCsv(csvText(rows))).toEqual(rows);
    }),
    { numRuns: 150 },
  );
});
