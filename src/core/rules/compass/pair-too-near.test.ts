import { expect, test } from 'vitest';
import { compassFindings } from './compass-case.test-helper.ts';
import { pairTooNear } from './pair-too-near.ts';

test('a pair that does not turn the card passes, and so does a single wire, of which another rule speaks', () => {
  expect(compassFindings(pairTooNear)).toEqual([]);
  expect(compassFindings(pairTooNear, { feed: { laid: 'single', tooNear: true } })).toEqual([]);
});

test('a pair right beside the bowl is a doubt with the distance it should keep', () => {
  const found = compassFindings(pairTooNear, { feed: { fieldUt: 2.4, deviationDeg: 9.1, keepM: 0.3, tooNear: true } });
  expect(found).toMatchObject([{ level: 'doubt', measured: { value: 9.1 }, limit: { value: 1.2, unit: '°' } }]);
  expect(found[0]?.cure).toContain('0.30 m');
});
