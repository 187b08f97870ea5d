import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { horizons } from '../../facts/radar-figures.ts';
import { horizonNm, horizonPerRootM, sightNm } from './horizon.ts';

const footM = 0.3048;
const ft = (...feet: number[]): number[] => feet.map((height) => height * footM);
const near = (value: number, wanted: number, within: number): void =>
  expect(Math.abs(value - wanted)).toBeLessThanOrEqual(within);

describe('horizons (Bowditch, NGA Pub. 9, ch. 22, second-hand, and the trade figure for VHF)', () => {
  it.each([
    ['HZ-01', 'visible', ft(16), 4.68, 0.005],
    ['HZ-02', 'visible', ft(125), 13.081, 0.005],
    ['HZ-03', 'visible', ft(16, 125), 17.761, 0.05],
    ['HZ-04', 'visible', [10], 6.7016, 0.005],
    ['HZ-05', 'radar', [4], 4.4196, 0.005],
    ['HZ-06', 'vhf', ft(18, 12), 9.4793, 0.005],
    ['HZ-12', 'vhf', ft(60, 60), 19.055, 0.01],
    ['HZ-13', 'radar', [4, 10], 11.408, 0.01],
  ] as const)('%s: %s from %j m', (_id, kind, heightsM, distanceNm, within) => {
    near(horizonNm(kind, ...heightsM), distanceNm, within);
  });

  it('HZ-08: 16 m see 8.48 nm, not the 8.28 of the metric constant that is printed wrong', () => {
    near(horizonNm('visible', 16), 8.4769, 0.005);
    expect(Math.abs(horizonNm('visible', 16) - 8.28)).toBeGreaterThan(0.1);
  });

  it('HZ-09: four thirds of the earth give 2.2256 for a root of a metre and 1.2287 for one of a foot; 1.23 is that (Fed-Std-1037C, IALA)', () => {
    const effectiveM = (4 / 3) * 6_371_000;
    near(effectiveM / 1000, 8494.7, 1);
    const perRootM = Math.sqrt(2 * effectiveM) / 1852;
    near(perRootM, 2.2256, 0.0005);
    near(perRootM * Math.sqrt(footM), 1.2287, 0.0005);
    near(horizonPerRootM('vhf') / perRootM, 1, 0.002);
    expect(horizons.vhf.value).toBe(1.23);
  });

  it('other constants by the same sum: 2.25 of the radio course (HZ-07), 2.5 of sea area A1 (HZ-10, HZ-11, from memory)', () => {
    near(sightNm(2.25, [30, 62]), 30.04, 0.005);
    near(sightNm(2.5, [100, 4]), 30, 0.005);
    near(sightNm(2.5, [50, 4]), 22.678, 0.01);
  });
});

it('four times the height is twice the horizon, and a second station only adds', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      (a, b) => {
        expect(horizonNm('vhf', 4 * a)).toBeCloseTo(2 * horizonNm('vhf', a), 9);
        expect(horizonNm('vhf', a, b)).toBeCloseTo(horizonNm('vhf', a) + horizonNm('vhf', b), 9);
        expect(horizonNm('radar', a)).toBeLessThan(horizonNm('vhf', a));
      },
    ),
  );
});
