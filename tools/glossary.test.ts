import { expect, test } from 'vitest';
import { glossaryRows, glossarySource } from './glossary.ts';

const page =
  '# Glossary\n\n| word | also | meaning |\n| --- | --- | --- |\n| **tee** | | where a drop plugs in |\n| **NMEA 0183** | 0183, pair | the older language |\n';

test('a row of the page is a word, its other forms and its meaning; heading rows are none', () => {
  expect(glossaryRows(page)).toEqual([
    { word: 'tee', also: [], meaning: 'where a drop plugs in' },
    { word: 'NMEA 0183', also: ['0183', 'pair'], meaning: 'the older language' },
  ]);
});

test('a word that is explained twice is refused by name', () => {
  expect(() => glossaryRows(`${page}| **pair** | | two wires |\n`)).toThrow('explains "pair" twice');
});

test('what the app carries is a table of those rows', () => {
  expect(glossarySource(page)).toContain('  ["NMEA 0183",["0183","pair"],"the older language"],');
});
