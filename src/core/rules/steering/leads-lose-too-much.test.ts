import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { leadsLoseTooMuch } from './leads-lose-too-much.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(leadsLoseTooMuch);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

const kept = (areaMm2: number, drive = {}) =>
  aPilotBoat({ drive }).change((boat) => {
    boat.cables.push({
      id: 'old-lead',
      kind: 'analog',
      from: { place: 'locker' },
      to: { place: 'stern-rail' },
      serves: 'pump-lead',
      ways: ['locker-stern'],
      length: { valueM: 9, how: 'taped', lessM: 0, moreM: 0 },
      diameterMm: 7,
      areaMm2,
      condition: 'good',
      fate: 'stays',
    });
  }).boat;

test('9 m of 2.5 mm² to a drive of 6 A lose over 7 %: a fault', () => {
  const finding = found(kept(2.5)).find(({ says }) => says.includes('as it runs'));
  expect(finding?.about).toEqual(['pilot.motor', 'pump.motor']);
  expect(finding?.measured?.value).toBeGreaterThan(7);
  expect(finding?.limit).toMatchObject({ value: 3 });
});

test('16 mm² pass, but not with a peak that loses more than 10 %', () => {
  expect(found(kept(16))).toEqual([]);
  const [finding, ...others] = found(kept(6, { peakA: 30, runA: 2 }));
  expect(finding?.says).toContain('at its peak');
  expect(finding?.limit).toMatchObject({ value: 10 });
  expect(others).toEqual([]);
});
