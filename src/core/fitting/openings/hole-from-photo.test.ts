import fc from 'fast-check';
import { expect, test } from 'vitest';
import { holeSchema } from '../../boat/opening.ts';
import { holeFromPhoto } from './hole-from-photo.ts';

const scale = { from: { xPx: 100, yPx: 700 }, to: { xPx: 500, yPx: 700 }, apartMm: 100 };

test('four points of a photo give a hole in millimetres about its middle, up being up', () => {
  const corners = [
    [100, 100],
    [900, 100],
    [900, 500],
    [140, 500],
  ] as const;
  expect(holeFromPhoto(corners, scale)).toEqual({
    shape: 'traced',
    widthMm: 200,
    heightMm: 100,
    outlineMm: [
      [-100, 50],
      [100, 50],
      [100, -50],
      [-90, -50],
    ],
  });
});

test('two points that are one, and points on a line, give none', () => {
  const line = [
    [0, 0],
    [50, 0],
    [100, 0],
  ] as const;
  expect(holeFromPhoto(line, scale)).toBeUndefined();
  expect(holeFromPhoto([...line, [0, 90]], { ...scale, to: scale.from })).toBeUndefined();
});

test('whatever is traced is a hole the boat file takes', () => {
  const px = fc.integer({ min: 0, max: 2000 });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(px, px), { minLength: 3, maxLength: 30 }),
      fc.integer({ min: 20, max: 400 }),
      (points, apartMm) => {
        const hole = holeFromPhoto(points, { ...scale, apartMm });
        if (hole !== undefined) expect(holeSchema.safeParse(hole).success).toBe(true);
      },
    ),
    { numRuns: 60 },
  );
});
