import fc from 'fast-check';
import { expect, test } from 'vitest';
import { waySlack } from '../facts/way-slack.ts';
import { guessedLength } from './guessed-length.ts';
import { straightLineM } from './straight-line.ts';

const metresArbitrary = fc.integer({ min: -5000, max: 20000 }).map((mm) => mm / 1000);
const spot = fc.record({ xM: metresArbitrary, yM: metresArbitrary, zM: metresArbitrary });

test('three and four metres at a right angle are five metres apart', () => {
  expect(straightLineM({ xM: 1, yM: -2, zM: 0.5 }, { xM: 4, yM: 2, zM: 0.5 })).toBe(5);
});

test('a way of 5 m straight is guessed at 6.5 m, and places at one spot are joined by 0.1 m', () => {
  const one = { xM: 0, yM: 0, zM: 0 };
  expect(guessedLength(one, { xM: 3, yM: 4, zM: 0 })).toEqual({ valueM: 6.5, how: 'guessed' });
  expect(guessedLength(one, one)).toEqual({ valueM: 0.1, how: 'guessed' });
});

test('a guess is never shorter than the straight line with its slack, nor more than a centimetre longer', () => {
  fc.assert(
    fc.property(spot, spot, (one, other) => {
      const { valueM } = guessedLength(one, other);
      const wantedM = Math.max(waySlack.least.value, waySlack.timesStraight.value * straightLineM(one, other));
      expect(valueM).toBeGreaterThanOrEqual(wantedM - 1e-8);
      expect(valueM - wantedM).toBeLessThanOrEqual(0.01);
      expect(guessedLength(other, one).valueM).toBe(valueM);
    }),
  );
});
