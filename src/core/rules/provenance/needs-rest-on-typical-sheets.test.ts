import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { ReadingEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { needsRestOnTypicalSheets } from './needs-rest-on-typical-sheets.ts';

const arrived = (fields: Partial<ReadingEntry> = {}): ReadingEntry => ({
  reading: 'position',
  at: 'display',
  must: true,
  arrives: true,
  rests: 'typical',
  by: ['gnss.n2k', 'display.n2k'],
  backups: [],
  ...fields,
});

test('readings that rest on manuals or a recording pass, and so do nice-to-have ones', () => {
  const readings = [
    arrived({ rests: 'manual' }),
    arrived({ rests: 'recording', reading: 'heading' }),
    arrived({ must: false }),
  ];
  expect(findingsOf(needsRestOnTypicalSheets, { plan: { readings } })).toEqual([]);
});

test('all that rest on typical sheets are one doubt about the whole boat', () => {
  const boat = aBoat().sheet('small-display', (sheet) => {
    sheet.source = 'manual';
    sheet.sourceNote = 'page 3';
  }).boat;
  const readings = [arrived(), arrived({ reading: 'time-date' }), arrived({ reading: 'heading', rests: 'manual' })];
  const found = findingsOf(needsRestOnTypicalSheets, { boat, plan: { readings } });
  expect(found).toMatchObject([{ level: 'doubt', about: [], measured: { value: 2 } }]);
  expect(found[0]?.says).toMatch(/^2 of the 3 readings .* 1 sheet in all/);
});
