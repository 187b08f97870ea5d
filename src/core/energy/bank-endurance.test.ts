import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { bankEndurance } from './bank-endurance.ts';

const chemistry = fc.constantFrom('flooded', 'agm', 'gel', 'lifepo4', 'other' as const);
const amps = fc.double({ min: 0.01, max: 200, noNaN: true });
const capacity = fc.double({ min: 1, max: 2000, noNaN: true });

describe('how long a bank lasts', () => {
  it('is half its 20 hours at its rated current, whatever the exponent (PW-69: lead 50 %)', () => {
    for (const lead of ['flooded', 'agm', 'gel', 'other'] as const) {
      expect(bankEndurance({}, { chemistry: lead, capacityAh: 200 }, 10).hours).toBeCloseTo(10, 9);
    }
    expect(bankEndurance({}, { chemistry: 'lifepo4', capacityAh: 200 }, 10).hours).toBeCloseTo(16, 9);
  });

  it('is less above it by Peukert: 20 A from 100 Ah with k 1.25 give 70.7 Ah (PW-71), of which half is used', () => {
    const { usableAh } = bankEndurance({}, { chemistry: 'other', capacityAh: 100 }, 20);
    expect(Math.abs(usableAh - 70.7 / 2)).toBeLessThan(0.2);
  });

  it('below it is held to the capacity (PW-70)', () => {
    expect(bankEndurance({}, { chemistry: 'other', capacityAh: 200 }, 5)).toEqual({ usableAh: 100, hours: 20 });
    expect(bankEndurance({}, { chemistry: 'agm', capacityAh: 200 }, 0)).toEqual({ usableAh: 100 });
  });

  it('counts the share the owner goes down to', () => {
    const limits = { 'bank-usable-lead': { value: 30, reason: 'Charged by engine only.' } };
    const { boat } = aBoat().with({ limits });
    expect(bankEndurance(boat, { chemistry: 'agm', capacityAh: 200 }, 5).usableAh).toBeCloseTo(60, 9);
  });

  it('is never less for a bigger bank, nor more for a higher current', () => {
    fc.assert(
      fc.property(chemistry, capacity, amps, fc.double({ min: 1, max: 3, noNaN: true }), (made, ah, meanA, factor) => {
        const hoursOf = (capacityAh: number, currentA: number): number =>
          bankEndurance({}, { chemistry: made, capacityAh }, currentA).hours ?? Number.NaN;
        expect(hoursOf(ah * factor, meanA)).toBeGreaterThanOrEqual(hoursOf(ah, meanA) * (1 - 1e-9));
        expect(hoursOf(ah, meanA * factor)).toBeLessThanOrEqual(hoursOf(ah, meanA) * (1 + 1e-9));
      }),
    );
  });
});
