import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from './parse-length.ts';
import { printLength } from './print-length.ts';

describe('a length somebody typed', () => {
  it.each([
    ['12 ft 6', 3.81],
    ['12 ft 6 in', 3.81],
    ['12\' 6"', 3.81],
    ['12\'6"', 3.81],
    ['12′6″', 3.81],
    ['12.5 ft', 3.81],
    ['150 in', 3.81],
    ['3.81 m', 3.81],
    ['3,81', 3.81],
    [' 3.81 ', 3.81],
    ['381cm', 3.81],
    ['3810 mm', 3.81],
    ['6 1/2 in', 0.1651],
    ['1 ft 0 1/2', 0.3175],
    ['5 feet', 1.524],
    ['0', 0],
  ])('"%s" is %d m', (text, expectedM) => {
    expect(parseLength(text)).toBe(expectedM);
  });

  it.each(['', 'long', '-3', '1e3', '12 ft 14 in', '12.5 ft 6 in', '1,250 mm', '3 1/0 in', '5 m 20', '6 ft m'])(
    '"%s" is not guessed at',
    (text) => {
      expect(parseLength(text)).toBeUndefined();
    },
  );
});

describe('a length on paper', () => {
  it('is in metres to the centimetre, or in feet and whole inches', () => {
    expect(printLength({ valueM: 3.81, as: 'metres' })).toBe('3.81 m');
    expect(printLength({ valueM: 3.81, as: 'feet' })).toBe('12 ft 6 in');
    expect(printLength({ valueM: 3.657, as: 'feet' })).toBe('12 ft');
    expect(printLength({ valueM: 0.25, as: 'feet' })).toBe('10 in');
    expect(printLength({ valueM: 0, as: 'feet' })).toBe('0 in');
  });

  it('reads back as the same length, to the precision printed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), (valueM) => {
        const missM = (as: 'metres' | 'feet'): number =>
          Math.abs((parseLength(printLength({ valueM, as })) ?? Number.NaN) - valueM);
        expect(missM('metres')).toBeLessThanOrEqual(0.005 + 1e-9);
        expect(missM('feet')).toBeLessThanOrEqual(0.0127 + 1e-9);
      }),
    );
  });
});
