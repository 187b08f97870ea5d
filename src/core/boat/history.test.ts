import fc from 'fast-check';
import { expect, test } from 'vitest';
import { edits } from './edits/index.ts';
import { plausibleEdit } from './edits/plausible-edit.test-helper.ts';
import { aFullBoat } from './full-boat.test-helper.ts';
import { applyEdit, applyEdits, redo, undo } from './history.ts';
import { readBoat } from './read-boat.ts';
import { startHistory } from './start-history.ts';
import { tried } from './tried.test-helper.ts';
import { UserError } from './user-error.ts';
import { writeBoat } from './write-boat.ts';

const full = aFullBoat();

test('whatever edits are made, the boat can be saved and read again', () => {
  fc.assert(
    fc.property(fc.array(plausibleEdit(full), { maxLength: 12 }), (made) => {
      const { boat } = made.reduce(tried, startHistory(full));
      expect(readBoat(writeBoat(boat))).toEqual(boat);
    }),
    { numRuns: 40 },
  );
});

test('a new edit after taking one back leaves nothing to make again', () => {
  const first = applyEdit(startHistory(full), 'move-unit', { unit: 'gnss', place: 'helm' });
  const second = applyEdit(undo(first), 'move-unit', { unit: 'radio', place: 'locker' });
  expect(second.undone).toEqual([]);
  expect(redo(second)).toBe(second);
  expect(second.done.map((step) => step.title)).toEqual(['Move Old radio to electrical locker.']);
});

test('an edit that changes nothing is no step to take back', () => {
  const start = startHistory(full);
  expect(applyEdit(start, 'move-unit', { unit: 'gnss', place: 'stern-rail' })).toBe(start);
});

test('an edit is one step however much it changes, and leaves the boat before it alone', () => {
  const before = writeBoat(full);
  const history = applyEdit(startHistory(full), 'remove-unit', { unit: 'radio' });
  expect(history.done).toHaveLength(1);
  expect(writeBoat(full)).toBe(before);
  expect(edits['remove-unit'].apply(full, { unit: 'radio' })).toEqual(history.boat);
});

test('several edits are one step: made together, said together, taken back together', () => {
  const start = startHistory(full);
  const both = applyEdits(start, [
    { edit: 'move-unit', params: { unit: 'radio', place: 'locker' } },
    { edit: 'remove-unit', params: { unit: 'gnss' } },
  ]);
  expect(both.done.map((step) => step.title)).toEqual([
    'Move Old radio to electrical locker. Take GNSS on the stern rail out of the boat.',
  ]);
  const alone = applyEdit(applyEdit(start, 'move-unit', { unit: 'radio', place: 'locker' }), 'remove-unit', {
    unit: 'gnss',
  });
  expect(writeBoat(both.boat)).toBe(writeBoat(alone.boat));
  expect(writeBoat(undo(both).boat)).toBe(writeBoat(full));
});

test('of several edits all are made or none', () => {
  const start = startHistory(full);
  const calls: Parameters<typeof applyEdits>[1] = [
    { edit: 'move-unit', params: { unit: 'radio', place: 'locker' } },
    { edit: 'move-unit', params: { unit: 'nobody', place: 'locker' } },
  ];
  expect(() => applyEdits(start, calls)).toThrow(UserError);
  expect(writeBoat(start.boat)).toBe(writeBoat(full));
});

test('a step may have a title of its own', () => {
  const params = { unit: 'radio', place: 'locker' };
  const history = applyEdits(startHistory(full), [{ edit: 'move-unit', params }], 'Put the radio out of the wet.');
  expect(history.done.at(-1)?.title).toBe('Put the radio out of the wet.');
});
