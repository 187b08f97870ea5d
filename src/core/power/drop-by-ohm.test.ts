import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { awgConductors, metricConductors } from '../facts/conductors.ts';
import { ohmPerKmAt, workingC } from './conductor-ohm.ts';
import { conductorsOf } from './conductors-of.ts';
import { dropBudget } from './drop-budget.ts';
import { currentByOhmA, dropByOhmV } from './drop-by-ohm.ts';
import { pathDrop } from './path-drop.ts';

const metric = (size: string): number =>
  conductorsOf('metric').find((one) => one.size === size)?.ohmPerKm20 ?? Number.NaN;

const plain = (areaMm2: number): number =>
  metricConductors.find((one) => one.areaMm2 === areaMm2)?.class5Plain ?? Number.NaN;

const nominal16 = conductorsOf('awg', 'nominal').find(({ size }) => size === '16')?.ohmPerKm20 ?? Number.NaN;

describe('the volts a real cable loses', () => {
  it.each([
    ['PW-16', 'IEC 60228 class 5 tinned 1.5 mm², computed', 1.6, 22, metric('1.5'), 12, 0.4822, 4.02],
    [
      'PW-17',
      'copper over the area of 16 AWG, computed; a public example prints 0.4 V',
      1,
      30.48,
      nominal16,
      12,
      0.4014,
      3.35,
    ],
    ['PW-18', 'IEC 60228 class 5 plain 2.5 mm², computed', 5, 18, plain(2.5), 24, 0.7182, 2.99],
  ])(
    '%s (%s): %f A over %f m at %f ohm/km on %i V: %f V, %f %%',
    (_id, _source, currentA, loopM, ohmPerKm, nominalV, volts, pct) => {
      const dropV = dropByOhmV({ currentA, loopM, ohmPerKm });
      expect(Math.abs(dropV / volts - 1)).toBeLessThan(0.005);
      expect(Math.abs((100 * dropV) / nominalV / pct - 1)).toBeLessThan(0.005);
    },
  );

  it.each([
    ['PW-19', metric('1.5'), 50, 15.344],
    ['PW-20', metric('2.5'), 30, 8.538],
    ['PW-21', metric('6'), 60, 3.932],
  ])('%s (IEC 60228 annex B, second-hand; computed): %f ohm/km are at %i °C %f', (_id, ohmPerKm20, tempC, ohmPerKm) => {
    expect(Math.abs(ohmPerKmAt({ ohmPerKm20, tempC }) / ohmPerKm - 1)).toBeLessThan(0.002);
  });

  it('are an eighth more in an engine space than at 20 °C', () => {
    expect([workingC(false), workingC(true)]).toEqual([30, 50]);
    expect(ohmPerKmAt({ ohmPerKm20: 1, tempC: workingC(true) })).toBeCloseTo(1.12, 9);
  });
});

describe('the way to a unit', () => {
  it('PW-22 (sum of feeder and branch, computed): each passes 3 %, and the unit feels 4.6 %', () => {
    const segments = [
      { currentA: 25, loopM: 6, ohmPerKm: metric('10') },
      { currentA: 4, loopM: 8, ohmPerKm: metric('2.5') },
    ];
    const lost = pathDrop({ nominalV: 12, segments });
    for (const [at, pct] of [2.44, 2.19].entries())
      expect(Math.abs((lost.segments[at]?.dropPct ?? 0) - pct)).toBeLessThan(0.02);
    expect(Math.abs(lost.dropV - 0.5552)).toBeLessThan(0.02);
    expect(Math.abs(lost.dropPct - 4.63)).toBeLessThan(0.02);
    expect(lost.above).toBe(true);
    expect(pathDrop({ nominalV: 12, segments: segments.slice(0, 1) }).above).toBe(false);
  });

  it('is warned of above 3 %, not at 3 %', () => {
    const segment = { currentA: 0.1 + 0.2, loopM: 12, ohmPerKm: 100 };
    expect(pathDrop({ nominalV: 12, segments: [segment] }).above).toBe(false);
    expect(pathDrop({ nominalV: 12, segments: [{ ...segment, loopM: 12.01 }] }).above).toBe(true);
  });

  it('may lose 3 %, or less where the unit stands less: 0.2 V for one that wants 10.8 V of 11.0', () => {
    expect(dropBudget({ nominalV: 12, limitPct: 3 })).toEqual({ dropV: 0.36, by: 'percent' });
    const told = dropBudget({ nominalV: 12, limitPct: 3, unit: { sourceV: 11, leastV: 10.8 } });
    expect(told.by).toBe('unit');
    expect(told.dropV).toBeCloseTo(0.2, 9);
    expect(dropBudget({ nominalV: 12, limitPct: 3, unit: { sourceV: 11, leastV: 9 } }).by).toBe('percent');
  });
});

describe('the current for a drop', () => {
  it('PW-23 (a maker of boat equipment, name withheld; arithmetic redone): 0.2 V over 8 m of 16 AWG carry less than 1 A', () => {
    expect(Math.abs((16 * nominal16) / 1000 / 0.2108 - 1)).toBeLessThan(0.005);
    expect(Math.abs(currentByOhmA({ dropV: 0.2, loopM: 16, ohmPerKm: nominal16 }) / 0.949 - 1)).toBeLessThan(0.005);
  });

  it.each([
    ['PW-24', '2.5', 7, 3.13],
    ['PW-25', '4', 10, 3.54],
    ['PW-26', '10', 7, 13.19],
  ])(
    '%s (IEC 60228 class 5 tinned, computed; power and drive cable of a pilot share one budget): %s mm², %i m in all, %f A for 3 %% of 12 V',
    (_id, size, oneWayM, amps) => {
      const currentA = currentByOhmA({ dropV: 0.36, loopM: 2 * oneWayM, ohmPerKm: metric(size) });
      expect(Math.abs(currentA / amps - 1)).toBeLessThan(0.01);
    },
  );

  it('is none where no volt may be lost, and without end where there is no way', () => {
    expect(currentByOhmA({ dropV: -0.1, loopM: 1, ohmPerKm: 1 })).toBe(0);
    expect(currentByOhmA({ dropV: 0.3, loopM: 0, ohmPerKm: 1 })).toBe(Number.POSITIVE_INFINITY);
  });
});

it('a thicker or shorter cable never loses more, nor a cooler one, and the parts of a way add up', () => {
  const part = fc.record({
    currentA: fc.double({ min: 0, max: 200, noNaN: true }),
    loopM: fc.double({ min: 0, max: 60, noNaN: true }),
    at: fc.nat(14),
    tempC: fc.integer({ min: 0, max: 60 }),
  });
  const ohmAt = (at: number, tempC: number): number =>
    ohmPerKmAt({ ohmPerKm20: conductorsOf('metric')[at]?.ohmPerKm20 ?? Number.NaN, tempC });
  fc.assert(
    fc.property(part, part, fc.double({ min: 0, max: 5, noNaN: true }), ({ at, tempC, ...one }, other, moreM) => {
      const dropV = dropByOhmV({ ...one, ohmPerKm: ohmAt(at, tempC) });
      expect(dropByOhmV({ ...one, ohmPerKm: ohmAt(at + 1, tempC) })).toBeLessThanOrEqual(dropV);
      expect(dropByOhmV({ ...one, ohmPerKm: ohmAt(at, tempC + 5) })).toBeGreaterThanOrEqual(dropV);
      expect(dropByOhmV({ ...one, loopM: one.loopM + moreM, ohmPerKm: ohmAt(at, tempC) })).toBeGreaterThanOrEqual(
        dropV,
      );
      const segments = [
        { ...one, ohmPerKm: ohmAt(at, tempC) },
        { currentA: other.currentA, loopM: other.loopM, ohmPerKm: ohmAt(other.at, other.tempC) },
      ];
      const all = pathDrop({ nominalV: 12, segments });
      expect(all.dropV).toBeCloseTo(
        all.segments.reduce((sum, each) => sum + each.dropV, 0),
        9,
      );
    }),
  );
});

it('a gauge sold by number may resist a tenth more than its full area would', () => {
  for (const { size, ohmPerKm20 } of conductorsOf('awg')) {
    const full = awgConductors.find((one) => one.size === size)?.areaMm2 ?? Number.NaN;
    expect(ohmPerKm20).toBeGreaterThan(17.241 / full);
    expect(ohmPerKm20).toBeLessThan((17.241 / full) * 1.125);
  }
});
