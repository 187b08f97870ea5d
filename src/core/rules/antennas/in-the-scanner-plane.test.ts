import { expect, test } from 'vitest';
import { antennaFindings, aRadar } from './antenna-case.test-helper.ts';
import { inTheScannerPlane } from './in-the-scanner-plane.ts';

const found = (distanceM: number, inPlane = true) =>
  antennaFindings(inTheScannerPlane, {
    sites: [
      aRadar({ neighbours: [{ unit: 'gnss', distanceM, offPlaneDeg: inPlane ? 4 : 40, inPlane, inTurn: false }] }),
    ],
  });

test('an antenna over or under the plane passes', () => {
  expect(found(0.9, false)).toEqual([]);
});

test('in the plane it is a doubt near by and advice farther off', () => {
  expect(found(0.9)).toMatchObject([{ level: 'doubt', about: ['display', 'gnss'] }]);
  expect(found(3.6)).toMatchObject([{ level: 'advice', limit: { value: 20, unit: '°' } }]);
});
