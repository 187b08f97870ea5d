import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseSigned, parseTyped, shownLength } from './typed-length.ts';

test('a length is typed in either unit, and kept to the millimetre', () => {
  expect(parseTyped('12 ft 6')).toBe(3.81);
  expect(parseTyped('12\'6"')).toBe(3.81);
  expect(parseTyped('3,8104')).toBe(3.81);
  expect(parseTyped('long')).toBeUndefined();
});

test('a measure to port or below the water has a minus before it, of either kind', () => {
  expect(parseSigned('-0.5')).toBe(-0.5);
  expect(parseSigned('− 1 ft')).toBe(-0.305);
  expect(parseSigned('+2 m')).toBe(2);
  expect(Object.is(parseSigned('-0'), 0)).toBe(true);
  expect(parseSigned('--1')).toBeUndefined();
});

test('what stands in a field reads back to what was there, to the centimetre or the inch', () => {
  fc.assert(
    fc.property(fc.double({ min: -20, max: 60, noNaN: true }), fc.constantFrom('metres', 'feet'), (valueM, units) => {
      const missM = Math.abs((parseSigned(shownLength(valueM, units)) ?? Number.NaN) - valueM);
      expect(missM).toBeLessThanOrEqual(units === 'feet' ? 0.0137 : 0.0061);
    }),
  );
});
