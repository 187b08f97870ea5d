import { expect, test } from 'vitest';
import { aCompassBoat } from '../../compass-boat.test-helper.ts';
import { compassFindings } from './compass-case.test-helper.ts';
import { unitTooNear } from './unit-too-near.ts';

const byManual = aCompassBoat().sheet('small-display', (sheet) => {
  sheet.source = 'manual';
}).boat;

test('a unit at its distance passes, and one whose distance is not known is another rule’s', () => {
  expect(compassFindings(unitTooNear)).toEqual([]);
  expect(compassFindings(unitTooNear, { unit: { safeM: 1, safeBy: 'taken', tooNear: true } })).toEqual([]);
});

test('within the distance of its manual it is a fault with both distances', () => {
  expect(compassFindings(unitTooNear, { boat: byManual, unit: { safeM: 0.8, tooNear: true } })).toMatchObject([
    { level: 'fault', about: ['card', 'display'], measured: { value: 0.5 }, limit: { value: 0.8, unit: 'm' } },
  ]);
});

test('by a typical sheet it is a doubt, to be settled by reading the plate', () => {
  const [finding] = compassFindings(unitTooNear, { unit: { safeM: 0.8, tooNear: true } });
  expect(finding?.level).toBe('doubt');
  expect(finding?.cure).toContain('plate');
});
