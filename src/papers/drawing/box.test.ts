import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Box, insideMm } from './box.ts';

const box: Box = { leftMm: 10, topMm: 20, rightMm: 30, bottomMm: 26 };

test('of a line through a box only what lies in it counts', () => {
  expect(insideMm(box, [0, 23], [100, 23])).toBe(20);
  expect(insideMm(box, [20, 0], [20, 22])).toBeCloseTo(2);
  expect(insideMm(box, [13, 22], [16, 26])).toBe(5);
  expect(insideMm(box, [7, 18], [13, 26])).toBeCloseTo(5);
});

test('a line beside a box, along its edge or of no length has nothing in it', () => {
  expect(insideMm(box, [9, 0], [9, 50])).toBe(0);
  expect(insideMm(box, [0, 27], [50, 27])).toBe(0);
  expect(insideMm(box, [0, 22], [12, 34])).toBe(0);
  expect(insideMm(box, [15, 23], [15, 23])).toBe(0);
});

test('any line has in a box what a thousand points along it say', () => {
  // lines never run along an edge: their points have whole coordinates, the edges none
  const coordinate = fc.integer({ min: -20, max: 20 });
  const point = fc.tuple(coordinate, coordinate);
  const edges = fc
    .tuple(coordinate, fc.integer({ min: 0, max: 20 }))
    .map(([from, size]) => [from + 0.5, from + 1.5 + size] as const);
  fc.assert(
    fc.property(point, point, edges, edges, (a, b, [leftMm, rightMm], [topMm, bottomMm]) => {
      const steps = 1000;
      let counted = 0;
      for (let step = 0.5; step < steps; step++) {
        const xMm = a[0] + ((b[0] - a[0]) * step) / steps;
        const yMm = a[1] + ((b[1] - a[1]) * step) / steps;
        if (xMm > leftMm && xMm < rightMm && yMm > topMm && yMm < bottomMm) counted++;
      }
      const lengthMm = Math.hypot(b[0] - a[0], b[1] - a[1]);
      const wrongMm = Math.abs(insideMm({ leftMm, topMm, rightMm, bottomMm }, a, b) - (counted / steps) * lengthMm);
      expect(wrongMm).toBeLessThanOrEqual((2 * lengthMm) / steps);
    }),
  );
});
