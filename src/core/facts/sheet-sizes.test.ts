import { expect, test } from 'vitest';
import { sheetBorders, sheetSizes } from './sheet-sizes.ts';

test('A4 is 210 by 297 mm and A3 is 297 by 420 mm (ISO 216)', () => {
  expect([sheetSizes.a4.heightMm, sheetSizes.a4.widthMm]).toEqual([210, 297]);
  expect([sheetSizes.a3.heightMm, sheetSizes.a3.widthMm]).toEqual([297, 420]);
});

test('a sheet of Letter is 8.5 by 11 inches and one of Tabloid 11 by 17 inches (ANSI Y14.1, sizes A and B)', () => {
  const inches = ({ widthMm, heightMm }: { widthMm: number; heightMm: number }) =>
    [heightMm, widthMm].map((sideMm) => Math.round((sideMm / 25.4) * 1000) / 1000);
  expect(inches(sheetSizes.letter)).toEqual([8.5, 11]);
  expect(inches(sheetSizes.tabloid)).toEqual([11, 17]);
});

test('two sheets of A4 side by side make one of A3: the longer side of one is the shorter of the other (ISO 216)', () => {
  expect(sheetSizes.a4.widthMm).toBe(sheetSizes.a3.heightMm);
  expect(2 * sheetSizes.a4.heightMm).toBe(sheetSizes.a3.widthMm);
});

test('the border is 20 mm where a sheet is bound and 10 mm elsewhere (ISO 5457)', () => {
  expect([sheetBorders.boundMm, sheetBorders.otherMm]).toEqual([20, 10]);
});
