import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pathData } from './path-data.ts';
import type { Point } from './point.ts';
import { parallel, partOf, polyline, polylineLengthMm } from './polyline.ts';
import { wavyLine } from './wavy-line.ts';

const pointArbitrary: fc.Arbitrary<Point> = fc.tuple(
  fc.double({ min: -200, max: 200, noNaN: true }),
  fc.double({ min: -200, max: 200, noNaN: true }),
);

test('a path is written to a hundredth of a millimetre, without "-0"', () => {
  expect(pathData([['M', 0, -0.001], ['L', 1.005, 2.34567], ['C', 1, 2, 3, 4, 5.5, -6], ['Z']])).toBe(
    'M0 0L1 2.35C1 2 3 4 5.5 -6Z',
  );
});

test('no path holds an exponent or a number that is not one', () => {
  fc.assert(
    fc.property(fc.array(pointArbitrary, { minLength: 1, maxLength: 6 }), (points) => {
      expect(pathData(polyline(points))).toMatch(/^M-?\d+(\.\d{1,2})? -?\d+(\.\d{1,2})?(L[-0-9. ]+)*$/);
    }),
    { numRuns: 100 },
  );
});

test('a line moved sideways by 2 mm keeps its corners 2 mm away', () => {
  const corner: Point[] = [
    [0, 0],
    [10, 0],
    [10, 10],
  ];
  expect(pathData(polyline(parallel(corner, 2)))).toBe('M0 2L8 2L8 10');
});

test('the middle part of a line keeps the corner inside it', () => {
  const corner: Point[] = [
    [0, 0],
    [10, 0],
    [10, 10],
  ];
  const part = partOf(corner, { fromMm: 4, toMm: 13 });
  expect(part).toEqual([
    [4, 0],
    [10, 0],
    [10, 3],
  ]);
  expect(polylineLengthMm(part)).toBe(9);
});

test('the wave of a guessed length starts and ends where the line does', () => {
  const steps = wavyLine([
    [0, 0],
    [30, 40],
  ]);
  expect(steps[0]).toEqual(['M', 0, 0]);
  const last = steps.at(-1)?.slice(-2);
  expect(last?.[0]).toBeCloseTo(30, 9);
  expect(last?.[1]).toBeCloseTo(40, 9);
  expect(steps.length % 2).toBe(1);
});
