import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conductorsOf } from './conductors-of.ts';
import { circularMilsForDrop } from './drop-rules.ts';
import { sizeByDrop } from './size-by-drop.ts';

describe('the smallest gauge by drop', () => {
  it.each([
    ['PW-01', 'ABYC E-11 worked example, second-hand', 10, 21, 0.36, 6270.8, '10', '12'],
    ['PW-02', 'ABYC E-11 drop formula, second-hand; computed', 20, 10, 0.36, 5972.2, '10', '12'],
    ['PW-03', 'ABYC E-11 worked example, second-hand', 10, 21, 1.2, 1881.2, '16', '16'],
    ['PW-04', 'ABYC E-11 drop formula, second-hand; printed tables say 6 by tolerance', 15, 60, 0.36, 26_875, '4', '4'],
    ['PW-05', 'ABYC E-11 drop formula, second-hand; computed', 5, 170, 0.36, 25_381.9, '4', '6'],
    ['PW-06', 'example of a public wiring guide, recomputed', 45, 40, 1.2, 16_125, '6', '8'],
    ['PW-07', 'ABYC E-11 drop formula, second-hand; computed', 100, 90, 0.36, 268_750, undefined, undefined],
    ['PW-08', 'ABYC E-11 drop formula, second-hand; computed', 25, 100, 0.72, 37_326.4, '4', '4'],
  ])(
    '%s (%s): %i A over %i ft out and back at %f V needs %f circular mils: %s by least area, %s by nominal',
    (_id, _source, currentA, loopFt, dropV, mils, byLeast, byNominal) => {
      expect(Math.abs(circularMilsForDrop({ currentA, loopFt, dropV }) - mils)).toBeLessThan(0.5);
      const ask = { system: 'awg', currentA, loopM: loopFt * 0.3048, dropV, engineSpace: false } as const;
      expect(sizeByDrop(ask)?.size).toBe(byLeast);
      expect(sizeByDrop({ ...ask, areas: 'nominal' })?.size).toBe(byNominal);
    },
  );
});

describe('the smallest metric size by drop', () => {
  it('is 2.5 mm² for a mast lamp of 20 W: 1.5 mm², right by the ISO rule with 3.2 %, would lose 4 % in real cable', () => {
    const lamp = { system: 'metric', currentA: 1.6, loopM: 22, dropV: 0.39, engineSpace: false } as const;
    expect(sizeByDrop(lamp)?.size).toBe('2.5');
  });

  it('grows in the heat of an engine space where the cooler wire had nothing to spare', () => {
    const ask = { system: 'metric', currentA: 10, loopM: 10, dropV: 0.36, engineSpace: false } as const;
    expect(sizeByDrop(ask)?.size).toBe('6');
    expect(sizeByDrop({ ...ask, engineSpace: true })?.size).toBe('10');
  });
});

describe('sizes by drop', () => {
  it('are the thinnest made where nothing flows, and none where no volt may be lost', () => {
    for (const system of ['awg', 'metric'] as const) {
      const ask = { system, loopM: 10, dropV: 0, engineSpace: false } as const;
      expect(sizeByDrop({ ...ask, currentA: 0 })).toBe(conductorsOf(system)[0]);
      expect(sizeByDrop({ ...ask, currentA: 1 })).toBeUndefined();
    }
  });

  it('never shrink as the current or the way grows, nor grow as more volts may be lost', () => {
    const ask = fc.record({
      system: fc.constantFrom('awg' as const, 'metric' as const),
      currentA: fc.double({ min: 0.1, max: 200, noNaN: true }),
      loopM: fc.double({ min: 0.1, max: 60, noNaN: true }),
      dropV: fc.double({ min: 0.1, max: 3, noNaN: true }),
      engineSpace: fc.boolean(),
    });
    const more = fc.double({ min: 1, max: 3, noNaN: true });
    const areaOf = (of: Parameters<typeof sizeByDrop>[0]) => sizeByDrop(of)?.areaMm2 ?? Number.POSITIVE_INFINITY;
    fc.assert(
      fc.property(ask, more, (one, times) => {
        const area = areaOf(one);
        expect(areaOf({ ...one, currentA: one.currentA * times })).toBeGreaterThanOrEqual(area);
        expect(areaOf({ ...one, loopM: one.loopM * times })).toBeGreaterThanOrEqual(area);
        expect(areaOf({ ...one, dropV: one.dropV * times })).toBeLessThanOrEqual(area);
        expect(areaOf({ ...one, engineSpace: true })).toBeGreaterThanOrEqual(area);
      }),
    );
  });
});
