import { expect, test } from 'vitest';
import { badlySeenOrReached } from './badly-seen-or-reached.ts';
import { fitFindings } from './fit-case.test-helper.ts';

const view = (own: object) => ({ view: { lettersMm: 5.8, floorMm: 3.5, ...own } });

test('20 degrees below the eye and within reach pass', () => {
  expect(fitFindings(badlySeenOrReached, view({ belowEyeDeg: 20, reachMm: 650 }))).toEqual([]);
  expect(fitFindings(badlySeenOrReached)).toEqual([]);
});

test.each([
  [5, 15, 'high'],
  [45, 30, 'low'],
])('%i degrees below the eye is advice against %i: too %s', (belowEyeDeg, limit, words) => {
  const [finding] = fitFindings(badlySeenOrReached, view({ belowEyeDeg }));
  expect(finding).toMatchObject({ level: 'advice', measured: { value: belowEyeDeg }, limit: { value: limit } });
  expect(finding?.says).toContain(words);
});

test('beyond 700 mm from the shoulder is advice', () => {
  expect(fitFindings(badlySeenOrReached, view({ reachMm: 900 }))).toMatchObject([
    { limit: { value: 700, unit: 'mm' } },
  ]);
});
