import { expect, test } from 'vitest';
import { aBoat } from '../core/boat/a-boat.test-helper.ts';
import { applyEdits } from '../core/boat/history.ts';
import { startHistory } from '../core/boat/start-history.ts';
import { writeBoat } from '../core/boat/write-boat.ts';
import { givenOutNow } from '../papers/binder/given-out.ts';
import { issueEdit, oldRevision } from './revisions-at-terminal.ts';

const { boat } = aBoat();
const on = '2026-11-26';
const issued = applyEdits(startHistory(boat), [issueEdit(boat, { says: 'For the yard.', on })]).boat;
const moved = applyEdits(startHistory(issued), [
  { edit: 'move-unit', params: { unit: 'display', place: 'locker' } },
]).boat;

test('papers bear the mark and the day of the revision last given out, until the boat changes', () => {
  expect(givenOutNow(boat)).toEqual({ standing: 'as planned' });
  expect(givenOutNow(issued)).toEqual({ standing: 'as planned', revision: 'A', dateIso: on });
  expect(givenOutNow(issued, '2027-01-01')).toEqual(givenOutNow(issued));
  expect(givenOutNow(moved)).toEqual({ standing: 'as planned' });
  expect(givenOutNow(moved, '2027-01-01')).toEqual({ standing: 'as planned', dateIso: '2027-01-01' });
});

test('an old revision is the boat of that day, and its papers say what they said', () => {
  const old = oldRevision(moved, 'A');
  expect(writeBoat(old.boat)).toBe(writeBoat(issued));
  expect(old.given).toEqual(givenOutNow(issued));
});

test('only a mark that was given out can be gone back to', () => {
  expect(() => oldRevision(moved, 'B')).toThrow('No revision “B” was given out.');
});
