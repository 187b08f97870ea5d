import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectedOhm } from './expected-ohm.ts';

test.each([
  [2, 10, 58.3, 58.8, 59.3],
  [2, 20, 56.6, 57.7, 58.6],
  [2, 30, 55.0, 56.6, 57.9],
  [2, 50, 52.2, 54.5, 56.6],
])('%i terminators and %i nodes read as the table of resistances says (computed)', (terminators, nodes, ...ohm) => {
  const { leastOhm, usualOhm, mostOhm } = expectedOhm({ terminators, nodes });
  expect([leastOhm, usualOhm, mostOhm].map((value) => Number(value.toFixed(1)))).toEqual(ohm);
});

test('three terminators without nodes read 40 ohm, one 120 (computed; WAGO 750 manual)', () => {
  expect(expectedOhm({ terminators: 3, nodes: 0 }).usualOhm).toBeCloseTo(40, 9);
  expect(expectedOhm({ terminators: 1, nodes: 0 }).usualOhm).toBeCloseTo(120, 9);
});

test('more nodes never read more, and the careful figure never more than the bare one', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 0, max: 60 }), (terminators, nodes) => {
      const { leastOhm, usualOhm, mostOhm } = expectedOhm({ terminators, nodes });
      expect(leastOhm).toBeLessThanOrEqual(usualOhm);
      expect(usualOhm).toBeLessThanOrEqual(mostOhm);
      expect(expectedOhm({ terminators, nodes: nodes + 1 }).usualOhm).toBeLessThanOrEqual(usualOhm);
    }),
  );
});
