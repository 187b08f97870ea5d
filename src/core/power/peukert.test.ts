import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { peukertExponents } from '../facts/battery-figures.ts';
import { peukert, peukertExponent } from './peukert.ts';

const source = 't = H (C/(I H))^k, public battery texts, second-hand; computed';

describe('how long a battery lasts', () => {
  it.each([
    ['PW-68', source, 200, 20, 1.2, 8.71, 174.1, 174.1],
    ['PW-69', source, 200, 10, 1.37, 20, 200, 200],
    ['PW-70', source, 200, 5, 1.2, 45.95, 229.7, 200],
    ['PW-71', source, 100, 20, 1.25, 3.54, 70.7, 70.7],
  ])(
    '%s (%s): %i Ah at 20 h give %i A, k %f, for %f h: %f Ah, of which %f can be used',
    (_id, _source, ratedAh, currentA, exponent, hours, ah, usableAh) => {
      const lasts = peukert({ ratedAh, ratedHours: 20, currentA, exponent });
      expect(Math.abs(lasts.formulaHours / hours - 1)).toBeLessThan(0.005);
      expect(Math.abs(lasts.formulaAh / ah - 1)).toBeLessThan(0.005);
      expect(Math.abs(lasts.usableAh / usableAh - 1)).toBeLessThan(0.005);
    },
  );

  it('PW-72 (k from two tests, second-hand; computed): 10 A for 20 h and 20 A for 8.7055 h make 1.2', () => {
    const exponent = peukertExponent({ currentA: 10, hours: 20 }, { currentA: 20, hours: 8.7055 });
    expect(Math.abs((exponent ?? 0) - 1.2)).toBeLessThan(0.005);
  });

  it('is for ever where nothing is drawn, and says nothing of k from two tests at one current', () => {
    expect(peukert({ ratedAh: 100, ratedHours: 20, currentA: 0, exponent: 1.2 })).toMatchObject({ usableAh: 100 });
    expect(peukertExponent({ currentA: 10, hours: 20 }, { currentA: 10, hours: 19 })).toBeUndefined();
  });

  it('at the rated current is the rated time whatever k is; more current never gives more, nor more than the battery holds', () => {
    const k = fc.double({ min: peukertExponents.lifepo4.least, max: peukertExponents.flooded.most, noNaN: true });
    const amps = fc.double({ min: 0.5, max: 100, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 800 }), k, amps, amps, (ratedAh, exponent, currentA, moreA) => {
        const at = (amperes: number) => peukert({ ratedAh, ratedHours: 20, currentA: amperes, exponent });
        expect(at(ratedAh / 20).formulaHours).toBeCloseTo(20, 9);
        expect(at(currentA + moreA).usableAh).toBeLessThanOrEqual(at(currentA).usableAh + 1e-9);
        expect(at(currentA).usableAh).toBeLessThanOrEqual(ratedAh);
        expect(at(currentA).usableHours * currentA).toBeCloseTo(at(currentA).usableAh, 6);
        const [one, other] = [currentA, currentA + moreA].map((amperes) => ({
          currentA: amperes,
          hours: at(amperes).formulaHours,
        }));
        if (one !== undefined && other !== undefined) expect(peukertExponent(one, other)).toBeCloseTo(exponent, 6);
      }),
    );
  });
});
