import { expect, test } from 'vitest';
import type { WayEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { wayTooFull } from './way-too-full.ts';

const found = (way: Partial<WayEntry>) =>
  findingsOf(wayTooFull, {
    plan: {
      ways: [
        {
          id: 'locker-stern',
          boreMm: 25,
          kept: ['old'],
          lines: ['coax:a.x~b.y'],
          fillPct: 30,
          sharePct: 31,
          leastBoreMm: 20,
          largestMm: 10.3,
          verdict: 'fits',
          reasons: [],
          ...way,
        },
      ],
    },
  });

test('40 % of the bore passes, a little more is a doubt with the bore that would take it', () => {
  expect(found({ fillPct: 40 })).toEqual([]);
  const [finding] = found({ fillPct: 40.2, verdict: 'doubt', reasons: ['fill'], fitsAtMm: 32 });
  expect(finding).toMatchObject({ level: 'doubt', about: ['locker-stern'], limit: { value: 40, unit: '%' } });
  expect(finding?.cure).toContain('A bore of 32 mm would take all of it.');
});

test('60 % is the most that is drawn in: above it the way is refused', () => {
  expect(found({ fillPct: 60, verdict: 'doubt', reasons: ['fill'] })).toMatchObject([{ level: 'doubt' }]);
  expect(found({ fillPct: 60.1, verdict: 'refused', reasons: ['fill'] })).toMatchObject([
    { level: 'fault', measured: { value: 60.1 }, limit: { value: 60 } },
  ]);
});

test('PW-91: a packed pipe into which nothing new goes is a doubt, never a fault', () => {
  const way: Partial<WayEntry> = { fillPct: 71.8, verdict: 'doubt', reasons: ['fill'], lines: [] };
  expect(found(way)).toMatchObject([{ level: 'doubt' }]);
});

test('PW-75 and MR-03: two cables above 31 % and three that may jam are advice', () => {
  expect(found({ fillPct: 33.9, verdict: 'advice', reasons: ['two-cables'] })).toMatchObject([
    { level: 'advice', limit: { value: 31 } },
  ]);
  expect(found({ fillPct: 35.4, verdict: 'advice', reasons: ['jam'] })).toMatchObject([{ level: 'advice' }]);
});

test('a plug that may not pass is not spoken of here', () => {
  expect(found({ verdict: 'refused', reasons: ['plug'] })).toEqual([]);
});
