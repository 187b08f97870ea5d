import { describe, expect, test } from 'vitest';
import { findSheets } from '../../core/facts/sheets/find-sheets.ts';
import { typicalSheets } from '../../core/facts/sheets/index.ts';
import { sheetsText } from './sheets-text.ts';

const found = (words: string): string => sheetsText(findSheets(words).map(({ sheet }) => sheet));

describe('the list of sheets', () => {
  test('says what each is, says and hears, and how many there are', () => {
    expect(found('which way the rudder points')).toBe(
      [
        'rudder-sensor-bus',
        '  Rudder angle sensor for the bus, typical',
        '  says   rudder angle',
        '  hears  nothing',
        '',
        '1 typical sheet. The maker’s own sheet of a unit wins.',
        '',
      ].join('\n'),
    );
  });

  test('names every typical sheet once, within 80 columns', () => {
    const lines = sheetsText(typicalSheets).split('\n');
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
    for (const { id } of typicalSheets) expect(lines.filter((line) => line === id)).toEqual([id]);
  });

  test('says in words that nothing was found', () => {
    expect(found('xyzzy')).toMatch(/^No sheet answers .*\.\n$/s);
  });
});
