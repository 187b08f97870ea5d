import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cableGramsPerM } from '../facts/mast-work.ts';
import { gramsPerM, weightKg } from './cable-weight.ts';

test('18 m of cable at 155 g/m hang with 2.79 kg (MR-04, linear density from memory)', () => {
  expect(weightKg({ gramsPerM: 155, lengthM: 18 })).toBeCloseTo(2.79, 10);
});

test('the rule by diameter comes within half of the weights known', () => {
  const known = [
    [4.95, cableGramsPerM['rg-58']],
    [6.1, cableGramsPerM['rg-8x']],
    [10.3, cableGramsPerM['rg-213']],
    [6.9, cableGramsPerM['bus drop']],
    [9, cableGramsPerM['radar pair']],
  ] as const;
  for (const [outsideMm, grams] of known) expect(Math.abs(gramsPerM(outsideMm) / grams - 1)).toBeLessThan(0.5);
});

test('a longer or a thicker cable never weighs less', () => {
  const size = fc.double({ min: 1, max: 40, noNaN: true });
  fc.assert(
    fc.property(size, size, fc.double({ min: 0, max: 60, noNaN: true }), (one, more, lengthM) => {
      const thin = weightKg({ gramsPerM: gramsPerM(one), lengthM });
      expect(weightKg({ gramsPerM: gramsPerM(one + more), lengthM })).toBeGreaterThanOrEqual(thin);
      expect(weightKg({ gramsPerM: gramsPerM(one), lengthM: lengthM + more })).toBeGreaterThan(thin);
    }),
  );
});
