import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { applyEdits, undo } from '../boat/history.ts';
import type { Sheet } from '../boat/sheet.ts';
import { applyChanges } from '../boat/sheet-changes.ts';
import { startHistory } from '../boat/start-history.ts';
import { unitDiffers } from './unit-differs.ts';

const tern = aBoat().boat;
const unitOf = (boat: Boat, id = 'gnss') => boat.kit.find((unit) => unit.id === id) ?? expect.unreachable();
const sheetOf = (boat: Boat, id = 'gnss'): Sheet => {
  const unit = unitOf(boat, id);
  const sheet = boat.sheets.find((one) => one.id === unit.sheet) ?? expect.unreachable();
  return applyChanges(sheet, unit.changes ?? []);
};
const withLen = (sheet: Sheet, len: number): Sheet => ({
  ...sheet,
  ports: sheet.ports.map((port) => (port.id === 'n2k' ? { ...port, len } : port)),
});
const made = (boat: Boat, draft: Sheet, how: 'manual' | 'seen' = 'seen'): Boat => {
  const differs = unitDiffers(boat, { unit: 'gnss', draft, how }) ?? expect.unreachable();
  const history = applyEdits(startHistory(boat), differs.edits, differs.says);
  expect(undo(history).boat).toEqual(boat);
  return history.boat;
};

test('what is entered is said of this unit alone, and its sheet stays', () => {
  const boat = made(tern, withLen(sheetOf(tern), 7));
  expect(unitOf(boat).changes).toEqual([{ path: 'ports.n2k.len', value: 7, how: 'seen' }]);
  expect(boat.sheets).toEqual(tern.sheets);
});

test('what was said before keeps how it is known, and goes where the sheet has it so again', () => {
  const once = made(tern, withLen(sheetOf(tern), 7));
  const twice = made(once, { ...sheetOf(once), ipCode: 'IP67' }, 'manual');
  expect(unitOf(twice).changes).toEqual([
    { path: 'ports.n2k.len', value: 7, how: 'seen' },
    { path: 'ipCode', value: 'IP67', how: 'manual' },
  ]);
  const { ipCode: _, ...dry } = sheetOf(twice);
  const back = made(made(twice, dry), sheetOf(tern));
  expect(back).toEqual(tern);
});

test('the name of the sheet and where it was read are no matter of one unit', () => {
  const draft = { ...sheetOf(tern), name: 'Another', source: 'manual' as const, sourceNote: 'Page 3.' };
  expect(unitDiffers(tern, { unit: 'gnss', draft, how: 'seen' })).toBeUndefined();
  expect(unitDiffers(tern, { unit: 'nobody', draft, how: 'seen' })).toBeUndefined();
});
