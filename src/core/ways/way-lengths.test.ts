import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Place, Way } from '../boat/boat-schema.ts';
import { straightLineMm, wayLengths } from './way-lengths.ts';

const place = (id: string, xM: number, yM: number, zM: number): Place => ({
  id,
  name: id,
  xM,
  yM,
  zM,
  exposure: 'dry',
  reach: 'open',
  tees: true,
});
const way = (valueM: number): Way => ({
  id: 'run',
  ends: ['one', 'other'],
  length: { valueM, how: 'taped', lessM: 0.05, moreM: 0.1 },
  kind: 'open',
  known: 'seen',
});
const placesOf = (...list: Place[]): Map<string, Place> => new Map(list.map((entry) => [entry.id, entry]));
const threeFourFive = placesOf(place('one', 1.1, 2.2, 0), place('other', 4.1, 6.2, 0));

test('a way of 5.5 m taped, 0.1 m longer at most, counts as 5500 and 5600 mm', () => {
  expect(wayLengths({ ways: [way(5.5)], places: threeFourFive }).get('run')).toEqual({
    mm: 5500,
    longestMm: 5600,
    guessed: false,
  });
});

test('a way entered shorter than the straight line counts as the straight line, no millimetre more', () => {
  expect(wayLengths({ ways: [way(4)], places: threeFourFive }).get('run')).toEqual({
    mm: 5000,
    longestMm: 5000,
    guessed: false,
  });
});

test('PW-93 (practice): a way guessed at 4 m is 5.2 m at most, and one guessed below its straight line of 3.8 m is 3.8 m', () => {
  const places = placesOf(place('one', 0, 0, 0), place('other', 3.8, 0, 0));
  const guessed = (valueM: number) =>
    wayLengths({ ways: [{ ...way(valueM), length: { valueM, how: 'guessed' } }], places }).get('run');
  expect(guessed(4)).toEqual({ mm: 4000, longestMm: 5200, guessed: true });
  expect(guessed(3.5)?.mm).toBe(3800);
});

test('a straight line between two millimetres is rounded up', () => {
  expect(straightLineMm(place('one', 0, 0, 0), place('other', 1, 1, 0))).toBe(1415);
});

test('a way between two places at one spot still has a length', () => {
  const both = placesOf(place('one', 1, 1, 1), place('other', 1, 1, 1));
  expect(wayLengths({ ways: [way(0)], places: both }).get('run')?.mm).toBe(1);
});

test('no way is shorter than its straight line, nor its longest length than its nominal one', () => {
  const coordinate = fc.integer({ min: -200, max: 200 }).map((n) => n / 10);
  fc.assert(
    fc.property(
      fc.tuple(coordinate, coordinate, coordinate),
      fc.integer({ min: 0, max: 300 }).map((n) => n / 10),
      ([xM, yM, zM], valueM) => {
        const places = placesOf(place('one', xM, yM, zM), place('other', yM, zM, xM));
        const length = wayLengths({ ways: [{ ...way(valueM), length: { valueM, how: 'guessed' } }], places }).get(
          'run',
        );
        const straight = Math.hypot(xM - yM, yM - zM, zM - xM) * 1000;
        expect(length?.mm).toBeGreaterThanOrEqual(straight - 1e-6);
        expect(length?.longestMm).toBeGreaterThanOrEqual(length?.mm ?? Number.POSITIVE_INFINITY);
      },
    ),
    { numRuns: 100 },
  );
});
