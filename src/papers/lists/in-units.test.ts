import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseLength } from '../../core/units/parse-length.ts';
import { inUnits } from './in-units.ts';

test.each([
  ['The drop is 6.40 m; the limit is 6 m.', 'The drop is 21 ft; the limit is 19 ft 8 in.'],
  ['trunk 14.35 m of 100', 'trunk 47 ft 1 in of 328 ft 1 in'],
  ['5.00\u00A0m of 6 m', '16 ft 5 in of 19 ft 8 in'],
  ['a bore of 32 mm, filled to 41 %', 'a bore of 1.26 in, filled to 41 %'],
  ['4 mm² on 12 V, 3 ms, 4 months, 5 m/s', '4 mm² on 12 V, 3 ms, 4 months, 5 m/s'],
  ['0.30 m', '1 ft'],
  ['24-inch dome, 2 A of 3 A, 15 of 50', '24-inch dome, 2 A of 3 A, 15 of 50'],
])('"%s" is "%s" in feet', (words, inFeet) => {
  expect(inUnits(words, 'feet')).toBe(inFeet);
});

test('both are said with the feet in brackets, and metres are left alone', () => {
  expect(inUnits('about 2.90 m', 'both')).toBe('about 2.90 m (9 ft 6 in)');
  expect(inUnits('about 2.90 m', 'metres')).toBe('about 2.90 m');
});

test('a length in feet reads back as the length it was, to half an inch', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 20_000 }), (cm) => {
      const valueM = cm / 100;
      const missM = Math.abs((parseLength(inUnits(`${valueM.toFixed(2)} m`, 'feet')) ?? Number.NaN) - valueM);
      expect(missM).toBeLessThanOrEqual(0.0127 + 1e-9);
    }),
  );
});
