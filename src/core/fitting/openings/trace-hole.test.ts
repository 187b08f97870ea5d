import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { holeSchema } from '../../boat/opening.ts';
import { traceHole } from './trace-hole.ts';

const rectangle = (widthPx: number, heightPx: number): [number, number][] => [
  [0, 0],
  [widthPx, 0],
  [widthPx, heightPx],
  [0, heightPx],
];

test('a rectangle on a photo has the size that two known points give it, y upwards', () => {
  const hole = traceHole({ outlinePx: rectangle(40, 20), fromPx: [0, 0], toPx: [10, 0], apartMm: 50 });
  expect(hole).toEqual({
    shape: 'traced',
    widthMm: 200,
    heightMm: 100,
    outlineMm: [
      [-100, 50],
      [100, 50],
      [100, -50],
      [-100, -50],
    ],
  });
});

test('nothing is traced of two points, of points in one line, or without a scale', () => {
  const scale = { fromPx: [0, 0], toPx: [10, 0], apartMm: 50 } as const;
  expect(traceHole({ ...scale, outlinePx: rectangle(40, 20).slice(0, 2) })).toBeUndefined();
  expect(traceHole({ ...scale, outlinePx: rectangle(40, 0) })).toBeUndefined();
  expect(traceHole({ ...scale, outlinePx: rectangle(40, 20), toPx: [0, 0] })).toBeUndefined();
});

const lengths = fc.integer({ min: 40, max: 900 });
const turns = fc.double({ min: -0.6, max: 0.6, noNaN: true });

test('a photo held askew gives the same hole as one held level, and what it gives is always a hole', () => {
  fc.assert(
    fc.property(lengths, lengths, turns, fc.boolean(), (widthPx, heightPx, turn, isSwapped) => {
      const turned = ([x, y]: readonly [number, number]): [number, number] => [
        900 + x * Math.cos(turn) - y * Math.sin(turn),
        900 + x * Math.sin(turn) + y * Math.cos(turn),
      ];
      const [left, right] = [turned([0, 0]), turned([widthPx, 0])];
      const hole = traceHole({
        outlinePx: rectangle(widthPx, heightPx).map(turned),
        ...(isSwapped ? { fromPx: right, toPx: left } : { fromPx: left, toPx: right }),
        apartMm: widthPx / 4,
        isLevel: true,
      });
      expect(holeSchema.safeParse(hole).success).toBe(true);
      expect(Math.abs((hole?.widthMm ?? 0) - widthPx / 4)).toBeLessThan(0.11);
      expect(Math.abs((hole?.heightMm ?? 0) - heightPx / 4)).toBeLessThan(0.11);
    }),
  );
});
