import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampsOfLen, lenOf } from './len-of.ts';

describe('BB-08, LEN rounding (several public installation handbooks agree)', () => {
  it.each([
    [50, 1],
    [51, 2],
    [151, 4],
    [1000, 20],
  ])('%d mA is LEN %d', (milliamps, len) => {
    expect(lenOf(milliamps / 1000)).toBe(len);
  });
});

describe('a load number', () => {
  it('is the least whole one that covers the current', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), (milliamps) => {
        const len = lenOf(milliamps / 1000);
        expect(ampsOfLen(len) * 1000).toBeGreaterThanOrEqual(milliamps - 1e-6);
        expect(ampsOfLen(len - 1) * 1000).toBeLessThan(milliamps + 1e-6);
        expect(lenOf(ampsOfLen(len))).toBe(len);
      }),
    );
  });
});
