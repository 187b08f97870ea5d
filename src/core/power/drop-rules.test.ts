import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaByRuleMm2, circularMilsForDrop, currentByRuleA, dropByRuleV } from './drop-rules.ts';

const annex = 'a cell of the annex table of ISO 10133:2012, second-hand; computed';

describe('the current a metric size may carry for 0.36 V by the ISO rule', () => {
  it.each([
    ['PW-09', annex, 10, 3, 73.17, 73],
    ['PW-10', annex, 2.5, 2, 27.44, 27],
    ['PW-11', annex, 6, 10, 13.17, 13],
    ['PW-12', annex, 35, 15, 51.22, 51],
    ['PW-13', annex, 50, 20, 54.88, 55],
    ['PW-14', 'ISO 10133 and 13297 drop formula, second-hand; computed', 16, 12.5, 28.1, 28],
  ])(
    '%s (%s): %f mm² over %f m out and back carries %f A, printed as %i',
    (_id, _source, areaMm2, loopM, amps, whole) => {
      const currentA = currentByRuleA({ rule: 'iso', areaMm2, loopM, dropV: 0.36 });
      expect(Math.abs(currentA - amps)).toBeLessThan(0.01);
      expect(Math.round(currentA)).toBe(whole);
    },
  );
});

describe('the volts a wire loses by the ISO rule', () => {
  it('PW-15 (ISO 10133 and 13297, second-hand; a public worked example gives 0.38 V): a mast lamp of 1.6 A on 22 m of 1.5 mm² loses 0.385 V, 3.2 %', () => {
    const dropV = dropByRuleV({ rule: 'iso', currentA: 1.6, loopM: 22, areaMm2: 1.5 });
    expect(Math.abs(dropV / 0.3849 - 1)).toBeLessThan(0.005);
    expect(Math.abs((100 * dropV) / 12 / 3.21 - 1)).toBeLessThan(0.005);
  });
});

describe('the published rules', () => {
  it('in circular mils and feet, and in mm² and metres, ask for the same copper', () => {
    const mils = circularMilsForDrop({ currentA: 10, loopFt: 21, dropV: 0.36 });
    const areaMm2 = areaByRuleMm2({ rule: 'abyc', currentA: 10, loopM: 21 * 0.3048, dropV: 0.36 });
    expect(Math.abs(areaMm2 / (mils * 0.000506707) - 1)).toBeLessThan(0.0001);
  });

  it('ask for no copper where nothing flows, and for more than there is where no volt may be lost', () => {
    expect(areaByRuleMm2({ rule: 'iso', currentA: 0, loopM: 5, dropV: 0 })).toBe(0);
    expect(areaByRuleMm2({ rule: 'iso', currentA: 1, loopM: 5, dropV: 0 })).toBe(Number.POSITIVE_INFINITY);
    expect(circularMilsForDrop({ currentA: 1, loopFt: 5, dropV: -0.1 })).toBe(Number.POSITIVE_INFINITY);
    expect(currentByRuleA({ rule: 'iso', areaMm2: 1, loopM: 0, dropV: 0.36 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('are one rule in three forms, in which a thicker wire never loses more and a longer never less', () => {
    const some = (max: number) => fc.double({ min: 0.1, max, noNaN: true });
    const asked = fc.record({
      rule: fc.constantFrom('abyc' as const, 'iso' as const),
      currentA: some(200),
      loopM: some(50),
    });
    fc.assert(
      fc.property(asked, some(3), fc.double({ min: 1, max: 5, noNaN: true }), (ask, dropV, times) => {
        const areaMm2 = areaByRuleMm2({ ...ask, dropV });
        expect(dropByRuleV({ ...ask, areaMm2 }) / dropV).toBeCloseTo(1, 9);
        expect(currentByRuleA({ ...ask, areaMm2, dropV }) / ask.currentA).toBeCloseTo(1, 9);
        expect(dropByRuleV({ ...ask, areaMm2: areaMm2 * times })).toBeLessThanOrEqual(dropV * (1 + 1e-9));
        expect(dropByRuleV({ ...ask, areaMm2, loopM: ask.loopM * times })).toBeGreaterThanOrEqual(dropV * (1 - 1e-9));
      }),
    );
  });
});
