import { expect, test } from 'vitest';
import { antennaFindings, aRadar } from './antenna-case.test-helper.ts';
import { scannerHasNoRoom } from './scanner-has-no-room.ts';

const found = (inTurn: boolean) =>
  antennaFindings(scannerHasNoRoom, {
    sites: [aRadar({ neighbours: [{ unit: 'gnss', distanceM: 0.35, offPlaneDeg: 0, inPlane: true, inTurn }] })],
  });

test('what stands outside the circle passes', () => {
  expect(found(false)).toEqual([]);
});

test('half the circle and 200 mm are wanted', () => {
  expect(found(true)).toMatchObject([{ level: 'doubt', about: ['display', 'gnss'], limit: { value: 0.5, unit: 'm' } }]);
});
