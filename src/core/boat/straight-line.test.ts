import fc from 'fast-check';
import { expect, test } from 'vitest';
import { guessedLength } from './guessed-length.ts';
import { straightLineM } from './straight-line.ts';

const metresArbitrary = fc.integer({ min: -5000, max: 20000 }).map((mm) => mm / 1000);
const spot = fc.record({ xM: metresArbitrary, yM: metresArbitrary, zM: metresArbitrary });

test('three and four metres at a right angle are five metres apart', () => {
  expect(straightLineM({ xM: 1, yM: -2, zM: 0.5 }, { xM: 4, yM: 2, zM: 0.5 })).toBe(5);
});

test('a way of 2 m straight is guessed at 2.6 m, one of 10 m up a mast at 10.5 m, and places at one spot are joined by 0.1 m', () => {
  expect(guessedLength(2, 'open')).toEqual({ valueM: 2.6, how: 'guessed', lessM: 0.6, moreM: 0.78 });
  expect(guessedLength(10, 'mast')).toMatchObject({ valueM: 10.5, lessM: 0.5 });
  expect(guessedLength(0, 'open')).toEqual({ valueM: 0.1, how: 'guessed', lessM: 0.1, moreM: 0.3 });
});

test('a guess at its shortest is never shorter than the straight line, and itself at most 5 cm over its share', () => {
  fc.assert(
    fc.property(spot, spot, (one, other) => {
      const straightM = straightLineM(one, other);
      const { valueM, lessM = 0 } = guessedLength(straightM, 'conduit');
      expect(valueM - lessM).toBeGreaterThanOrEqual(straightM - 1e-8);
      expect(valueM).toBeLessThanOrEqual(Math.max(0.1, 1.3 * straightM + 0.05) + 1e-8);
    }),
  );
});
