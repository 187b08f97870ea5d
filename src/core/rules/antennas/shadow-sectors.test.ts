import { expect, test } from 'vitest';
import { antennaFindings, aRadar } from './antenna-case.test-helper.ts';
import { shadowSectors } from './shadow-sectors.ts';

const shadow = {
  by: 'mast-base',
  kind: 'mast',
  distanceM: 1,
  acrossM: 0.15,
  fromDeg: 356,
  toDeg: 4,
  blankFromDeg: 351,
  blankToDeg: 9,
  isTotal: false,
} as const;

test('a radar without a shadow, or with one that ships may have, passes', () => {
  expect(antennaFindings(shadowSectors, { sites: [aRadar({})] })).toEqual([]);
  expect(antennaFindings(shadowSectors, { sites: [aRadar({ shadows: [shadow] })] })).toEqual([]);
});

test('one ahead is advice with the arc and what to blank', () => {
  const own = {
    shadows: [shadow],
    sectors: [{ fromDeg: 356, toDeg: 4 }],
    largestDeg: 8,
    totalDeg: 8,
    isAhead: true,
    guidelineMet: false,
  };
  const [finding] = antennaFindings(shadowSectors, { sites: [aRadar(own)] });
  expect(finding).toMatchObject({ level: 'advice', about: ['display'], measured: { value: 8, unit: '°' } });
  expect(finding?.says).toContain('356° to 4°');
  expect(finding?.cure).toContain('Blank 351° to 9°');
});
