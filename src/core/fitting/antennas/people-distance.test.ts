import fc from 'fast-check';
import { expect, it } from 'vitest';
import { antennaLimits } from '../../facts/antenna-limits.ts';
import { icnirp2020WPerM2 } from '../../facts/radio-exposure.ts';
import { distanceRatio, peopleDistanceM } from './people-distance.ts';

const limitWPerM2 = antennaLimits['radio-power-density'].value;

it.each([
  ['RF-01', 3, 100, 1.4088],
  ['RF-02', 9, 100, 2.8109],
  ['RF-03', 3, 50, 0.99617],
])(
  '%s: 25 W with %d dBi in %d %% of six minutes (ICNIRP 1998, general public 2 W/m², second-hand)',
  (_id, gainDbi, dutyPct, distanceM) => {
    expect(peopleDistanceM({ powerW: 25, gainDbi, limitWPerM2, dutyPct })).toBeCloseTo(distanceM, 3);
  },
);

it('RF-04: the edition of 2020 allows 37 W/m² at 9.4 GHz, occupational 185; the stricter of 1998 is kept', () => {
  expect(icnirp2020WPerM2('public', 9.4)).toBeCloseTo(36.993, 1);
  expect(icnirp2020WPerM2('occupational', 9.4)).toBeCloseTo(184.97, 0);
  expect(antennaLimits['radar-power-density'].value).toBeLessThan(icnirp2020WPerM2('public', 9.4));
});

it('RF-05: a tenth of the limit is 3.16 times as far (inverse square)', () => {
  expect(distanceRatio(100, 10)).toBeCloseTo(3.1623, 3);
});

it('four times the power is twice as far', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 400, noNaN: true }),
      fc.double({ min: 0, max: 12, noNaN: true }),
      (powerW, gainDbi) => {
        const one = peopleDistanceM({ powerW, gainDbi, limitWPerM2 });
        expect(peopleDistanceM({ powerW: 4 * powerW, gainDbi, limitWPerM2 })).toBeCloseTo(2 * one, 9);
      },
    ),
  );
});
