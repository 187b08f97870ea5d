import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { LiveCurve } from '../../core/proof/live/live-snapshot.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import { liveCurve } from './live-curve.ts';

const size = { title: 'depth', widthMm: 80 };
const dataIn = ({ shapes }: Drawing): Shape[] =>
  shapes.filter((shape) => shape.kind === 'path' && shape.stroke?.ink === 'data');
const textsIn = ({ shapes }: Drawing): string[] =>
  shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

test('the curve says its unit, its span and round values beside it', () => {
  const points = Array.from({ length: 60 }, (_unused, at) => [(59 - at) * 1000, 8 + (at % 3) * 0.1] as const);
  const drawing = liveCurve({ unit: 'm', points }, size);
  expect(textsIn(drawing)).toEqual(['8.0', '8.1', '8.2', 'm', '59 s ago', 'now']);
  expect(dataIn(drawing)).toHaveLength(1);
});

test('a heading that passes north is no line across the drawing', () => {
  const points = [
    [2000, 358],
    [1000, 359],
    [0, 1],
  ] as const;
  expect(dataIn(liveCurve({ unit: '°', round: true, points }, size))).toHaveLength(1);
  expect(dataIn(liveCurve({ unit: '°', points }, size))[0]).not.toEqual(
    dataIn(liveCurve({ unit: '°', round: true, points }, size))[0],
  );
});

test('where nothing was said the line is broken', () => {
  const points = [
    [60_000, 1],
    [59_000, 1],
    [10_000, 2],
    [9000, 2],
  ] as const;
  expect(dataIn(liveCurve({ unit: 'kn', points }, size))).toHaveLength(2);
});

test('whatever is drawn lies on the drawing', () => {
  const point = fc.tuple(fc.integer({ min: 0, max: 300_000 }), fc.double({ min: -1e5, max: 1e5, noNaN: true }));
  fc.assert(
    fc.property(fc.array(point, { maxLength: 50 }), (points) => {
      const curve: LiveCurve = { unit: 'm', points: [...points].sort((a, b) => b[0] - a[0]) };
      const drawing = liveCurve(curve, size);
      for (const shape of dataIn(drawing)) {
        const numbers = shape.kind === 'path' ? (shape.d.match(/-?[\d.]+/g) ?? []).map(Number) : [];
        for (const [at, number] of numbers.entries()) {
          expect(number).toBeGreaterThanOrEqual(0);
          expect(number).toBeLessThanOrEqual(at % 2 === 0 ? drawing.widthMm : drawing.heightMm);
        }
      }
      expect(textsIn(drawing).length).toBeLessThan(14);
    }),
  );
});
