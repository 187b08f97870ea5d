import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseBore } from './parse-bore.ts';

it.each([
  ['32', 32],
  [' 32.5 ', 32.5],
  ['12,7', 12.7],
  ['32 mm', 32],
  ['3.2 cm', 32],
  ['1 1/4 in', 31.75],
  ['1.25"', 31.75],
  ['1/2 in', 12.7],
])('a bore written "%s" is %d mm', (text, expectedMm) => {
  expect(parseBore(text)).toBe(expectedMm);
});

it.each(['', 'wide', '-3', '1,250', '1 1/4 of an inch'])('"%s" is not guessed at as a bore', (text) => {
  expect(parseBore(text)).toBeUndefined();
});

it('a bore in inches is 25.4 times its millimetres', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 400 }), (tenths) => {
      expect(parseBore(`${tenths / 10} in`)).toBeCloseTo(tenths * 2.54, 3);
    }),
  );
});
