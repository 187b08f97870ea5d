import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clipPiece, clipShapes } from './clip-shapes.ts';
import { flattenPath } from './flatten-path.ts';
import { pathShape } from './marks.ts';
import { moveShapes } from './move-shapes.ts';
import type { Point } from './point.ts';
import { polyline, rectangle } from './polyline.ts';
import { readPath } from './read-path.ts';
import type { Shape } from './shapes.ts';

const box = { leftMm: 0, topMm: 0, rightMm: 10, bottomMm: 10 };
const stroke = { ink: 'ink', widthMm: 0.3 } as const;

test('a line that crosses the box is cut at both of its edges', () => {
  expect(
    clipPiece(
      [
        [-5, 5],
        [15, 5],
      ],
      box,
    ),
  ).toEqual([
    [0, 5],
    [10, 5],
  ]);
  expect(
    clipPiece(
      [
        [-5, -5],
        [-1, 20],
      ],
      box,
    ),
  ).toBeUndefined();
});

test('what is kept of any line lies in the box and on the line', () => {
  const at = fc.tuple(fc.integer({ min: -30, max: 40 }), fc.integer({ min: -30, max: 40 }));
  fc.assert(
    fc.property(at, at, (from: Point, to: Point) => {
      const kept = clipPiece([from, to], box);
      for (const [x, y] of kept ?? []) {
        expect(x >= -1e-9 && x <= 10 + 1e-9 && y >= -1e-9 && y <= 10 + 1e-9).toBe(true);
        const off = (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);
        expect(Math.abs(off)).toBeLessThan(1e-6);
      }
    }),
  );
});

test('a large filled figure is cut as a figure and its outline as a line; a small one is whole or absent', () => {
  const large = pathShape(rectangle({ leftMm: -10, topMm: 2, widthMm: 15, heightMm: 4 }), { stroke, fill: 'paper' });
  const [fill, outline] = clipShapes([large], box);
  expect(fill).toMatchObject({ fill: 'paper', d: 'M0 2L5 2L5 6L0 6Z' });
  expect(outline).toMatchObject({ stroke, d: 'M0 2L5 2L5 6L0 6' });
  const small = pathShape(rectangle({ leftMm: -1, topMm: 2, widthMm: 2, heightMm: 2 }), { fill: 'ink' });
  expect(clipShapes([small], box)).toEqual([]);
});

test('a text or a circle that reaches over the edge is left out', () => {
  const text: Shape = { kind: 'text', xMm: 8, yMm: 5, text: 'trunk', sizeMm: 3, face: 'words', ink: 'ink' };
  const circle: Shape = { kind: 'circle', xMm: 9.5, yMm: 5, radiusMm: 1 };
  expect(clipShapes([text, circle, { ...circle, xMm: 5 }], box)).toEqual([{ ...circle, xMm: 5 }]);
});

test('a path that was written and read back has the same steps', () => {
  const { d } = pathShape(
    polyline([
      [0, 1],
      [2.5, 3],
    ]),
    { stroke },
  );
  expect(readPath(d)).toEqual([
    ['M', 0, 1],
    ['L', 2.5, 3],
  ]);
  expect(flattenPath(readPath('M0 0C0 1 1 1 1 0Z')).length).toBe(7);
});

test('moved shapes keep their look', () => {
  const [moved] = moveShapes(
    [
      pathShape(
        polyline([
          [0, 1],
          [2, 3],
        ]),
        { stroke },
      ),
    ],
    { xMm: 1, yMm: -1 },
  );
  expect(moved).toEqual({ kind: 'path', d: 'M1 0L3 2', stroke });
});
