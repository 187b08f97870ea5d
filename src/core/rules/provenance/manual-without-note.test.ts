import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { manualWithoutNote } from './manual-without-note.ts';

test('a sheet from the manual with its page noted, or a typical sheet, passes', () => {
  const boat = aBoat().sheet('small-display', (sheet) => {
    sheet.source = 'manual';
    sheet.sourceNote = 'installation manual, page 14';
  }).boat;
  expect(findingsOf(manualWithoutNote, { boat })).toEqual([]);
});

test('a sheet from the manual without a note is a doubt about that sheet', () => {
  const boat = aBoat().sheet('small-display', (sheet) => {
    sheet.source = 'manual';
  }).boat;
  expect(findingsOf(manualWithoutNote, { boat })).toMatchObject([{ level: 'doubt', about: ['small-display'] }]);
});
