import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { applyEdits, undo } from '../boat/history.ts';
import { startHistory } from '../boat/start-history.ts';
import { sheetFromManual } from './sheet-from-manual.ts';

const sheetOf = (boat: Boat, unit: string) =>
  boat.sheets.find(({ id }) => id === boat.kit.find((one) => one.id === unit)?.sheet);

const two = aBoat().add({
  kit: [{ id: 'gnss-2', name: 'Second GNSS', sheet: 'gnss-receiver', fate: 'comes', place: 'stern-rail' }],
}).boat;
const old = sheetOf(two, 'gnss');
if (old === undefined) throw new Error('no sheet');
const draft = { ...old, name: `${old.name}, typical`, sourceNote: 'Manual, page 12.' };

test('a typical sheet that is filled in becomes a copy of the units’ own, and the typical one stays', () => {
  const made = sheetFromManual(two, { unit: 'gnss', draft, forAll: true });
  const history = applyEdits(startHistory(two), made?.edits ?? [], made?.says);
  const { boat } = history;
  expect([sheetOf(boat, 'gnss'), sheetOf(boat, 'gnss-2')]).toEqual([made?.sheet, made?.sheet]);
  expect([made?.sheet.source, made?.sheet.name, made?.sheet.sourceNote]).toEqual([
    'manual',
    'GNSS receiver',
    'Manual, page 12.',
  ]);
  expect(boat.sheets.find(({ id }) => id === 'gnss-receiver')).toEqual(old);
  expect([history.done.length, undo(history).boat]).toEqual([1, two]);
});

test('for one unit alone the others keep the sheet they have', () => {
  const made = sheetFromManual(two, { unit: 'gnss', draft, forAll: false });
  const { boat } = applyEdits(startHistory(two), made?.edits ?? [], made?.says);
  expect(sheetOf(boat, 'gnss-2')).toEqual(old);
  expect(sheetOf(boat, 'gnss')?.source).toBe('manual');
});

test('a sheet of the manual is changed where it stands', () => {
  const first = sheetFromManual(two, { unit: 'gnss', draft, forAll: true });
  const { boat } = applyEdits(startHistory(two), first?.edits ?? []);
  const again = sheetFromManual(boat, {
    unit: 'gnss',
    draft: { ...draft, ...first?.sheet, name: 'Better known' },
    forAll: true,
  });
  expect(again?.edits.map(({ edit }) => edit)).toEqual(['set-sheet']);
  expect(again?.sheet.id).toBe(first?.sheet.id);
});

test('nothing changed is no step', () => {
  expect(sheetFromManual(two, { unit: 'gnss', draft: old, forAll: true })).toBeUndefined();
  expect(sheetFromManual(two, { unit: 'nobody', draft, forAll: true })).toBeUndefined();
});
