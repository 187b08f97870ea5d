import { describe, expect, it } from 'vitest';
import { coaxJoints, coaxKinds, coaxLimits, radioMhz } from './coax.ts';

const footM = 0.3048;

/** dB for 100 ft by the constants of the data sheet: k1 sqrt(f) + k2 f. */
const per100Ft = ({ k1, k2 }: { k1: number; k2: number }, mhz: number): number => k1 * Math.sqrt(mhz) + k2 * mhz;

/** dB for 100 m between two points, log-log. */
const between = (points: readonly (readonly [number, number])[], mhz: number): number => {
  const at = points.findIndex(([f]) => f >= mhz);
  const [low, high] = [points[at - 1] ?? [1, 1], points[at] ?? [1, 1]];
  return low[1] * (mhz / low[0]) ** (Math.log(high[1] / low[1]) / Math.log(high[0] / low[0]));
};

describe('the loss of coax', () => {
  it('low-loss foam 10 mm loses 5.04 dB in 100 m at 150 MHz (CX-01), 6 mm 5.28 dB in 100 ft at 450 MHz (CX-02): data sheet constants', () => {
    const ten = per100Ft(coaxKinds['low-loss-foam-10-mm'].constants, 150);
    expect(ten).toBeCloseTo(1.5367, 3);
    expect(ten / footM).toBeCloseTo(5.0418, 2);
    expect(per100Ft(coaxKinds['low-loss-foam-6-mm'].constants, 450)).toBeCloseTo(5.2838, 3);
  });

  it('the constants give a public table to its one decimal (CX-03)', () => {
    const printed = new Map([
      [10, 0.4],
      [30, 0.7],
      [50, 0.9],
      [150, 1.5],
      [220, 1.9],
      [450, 2.7],
    ]);
    for (const [mhz, db] of printed)
      expect(Math.abs(per100Ft(coaxKinds['low-loss-foam-10-mm'].constants, mhz) - db)).toBeLessThan(0.05);
  });

  it.each([
    ['CX-04', 'rg-213-u', radioMhz.voice.value, 9.12],
    ['CX-05', 'rg-58c-u', radioMhz.ais.value, 20.82],
    ['CX-06', 'rg-8x', 150, 15.42],
  ] as const)('%s: %s at %f MHz loses %f dB in 100 m (table points, log-log)', (_id, kind, mhz, db) => {
    expect(Math.abs(between(coaxKinds[kind].points.dbPer100M, mhz) - db)).toBeLessThan(0.03);
  });

  it('known by name only counts as the worst of several prints, never as less than the table', () => {
    for (const kind of ['rg-58c-u', 'rg-8x', 'rg-8-foam', 'semi-air-10-mm', 'low-loss-foam-15-mm'] as const) {
      const { points, byName } = coaxKinds[kind];
      expect(byName.dbPer100M).toBeGreaterThanOrEqual(between(points.dbPer100M, radioMhz.voice.value) - 0.05);
    }
  });

  it.each([
    ['CX-25, sound joints', coaxJoints.sound.value, 2.48],
    ['CX-29, weathered joints', coaxJoints.weathered.value, 3.28],
  ])('25 m of RG-213 with four joints: %s', (_id, joint, db) => {
    const total = (between(coaxKinds['rg-213-u'].points.dbPer100M, radioMhz.voice.value) * 25) / 100 + 4 * joint;
    expect(Math.abs(total - db)).toBeLessThan(0.02);
  });

  it('2.2185 dB is 40 % lost (CX-08, Offshore Special Regulations 2012-13, 3.29), 3 dB half (CX-09)', () => {
    expect(1 - 10 ** (-coaxLimits.fortyPercent.value / 10)).toBeCloseTo(0.4, 4);
    expect(10 ** (-coaxLimits.newFaultAbove.value / 10)).toBeCloseTo(0.50119, 5);
  });

  it('25 W come out as 12.53 W after 3 dB, 13.58 W after 2.65 dB (BB-56, computed)', () => {
    const left = [coaxLimits.newFaultAbove.value, 2.65].map((db) => 25 * 10 ** (-db / 10));
    expect(left[0]).toBeCloseTo(12.53, 2);
    expect(left[1]).toBeCloseTo(13.58, 2);
  });

  it('thin coax of 0.205 dB a metre reaches 14.6 m within 3 dB (BB-57, computed)', () => {
    expect(coaxLimits.newFaultAbove.value / 0.205).toBeCloseTo(14.6, 1);
  });
});
