import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sizeWithin } from './size-within.ts';

test('a picture of 4000 by 3000 pixels becomes one of 2000 by 1500, and a small one stays as it is', () => {
  expect(sizeWithin({ widthPx: 4000, heightPx: 3000 }, 2000)).toEqual({ widthPx: 2000, heightPx: 1500 });
  expect(sizeWithin({ widthPx: 640, heightPx: 900 }, 2000)).toEqual({ widthPx: 640, heightPx: 900 });
  expect(sizeWithin({ widthPx: 9000, heightPx: 2 }, 2000)).toEqual({ widthPx: 2000, heightPx: 1 });
});

test('no picture is ever longer than it may be, nor less than a pixel', () => {
  const side = fc.integer({ min: 1, max: 20_000 });
  fc.assert(
    fc.property(side, side, (widthPx, heightPx) => {
      const made = sizeWithin({ widthPx, heightPx }, 2000);
      expect(Math.max(made.widthPx, made.heightPx)).toBeLessThanOrEqual(2000);
      expect(Math.min(made.widthPx, made.heightPx)).toBeGreaterThanOrEqual(1);
    }),
  );
});
