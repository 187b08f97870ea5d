import fc from 'fast-check';
import { expect, test } from 'vitest';
import { typicalSheets } from '../facts/sheets/index.ts';
import { aBoat } from './a-boat.test-helper.ts';
import { canonicalSheet } from './canonical-sheet.ts';
import { readSheet } from './read-sheet.ts';
import { UserError } from './user-error.ts';
import { writeSheet } from './write-sheet.ts';

const [sheet] = aBoat().boat.sheets;
if (sheet === undefined) throw new Error('no sheet');

const refusal = (text: string): UserError | undefined => {
  try {
    readSheet(text);
    return undefined;
  } catch (error) {
    if (error instanceof UserError) return error;
    throw error;
  }
};

test('every typical sheet that is written to a file is read as it was', () => {
  for (const typical of typicalSheets) expect(readSheet(writeSheet(typical))).toEqual(canonicalSheet(typical));
});

test('what is no sheet is refused with one sentence and its place', () => {
  expect(refusal('{"format": "fairlead-boat"}')?.says).toContain('does not say "format": "fairlead-sheet"');
  expect(refusal('[1]')?.says).toContain('not the file of a sheet');
  expect(refusal('no JSON')).toBeDefined();
  const wrong = refusal(writeSheet(sheet).replace('"nmea2000"', '"nmea3000"'));
  expect(wrong?.says).toContain('nmea3000');
  expect(wrong?.place).toMatch(/^sheet\.ports.*, line \d+$/);
  const broken = refusal(writeSheet({ ...sheet, ports: [...sheet.ports, ...sheet.ports] }));
  expect(broken?.says).toContain('have the id');
  expect(refusal(writeSheet(sheet).replace('"version": 1', '"version": 2'))?.place).toContain('version');
});

test('whatever a file holds, it is read or refused', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
      expect(refusal(text)).toBeInstanceOf(UserError);
    }),
    { numRuns: 200 },
  );
});
