import { expect, test } from 'vitest';
import { deviationCard } from '../../core/fitting/sea/deviation-card.ts';
import { deviationDrawing } from './deviation-drawing.ts';

const card = deviationCard({ a: 0, b: 3, c: 0, d: 0, e: 0 });
const drawn = (points: Parameters<typeof deviationDrawing>[0]['points'], curve: readonly number[] = card) =>
  deviationDrawing({ title: 'curve', points, card: curve, widthMm: 120 });

const curveOf = ({ shapes }: ReturnType<typeof drawn>): string[] =>
  shapes.flatMap((shape) => (shape.kind === 'path' && shape.d.includes('C') ? [shape.d] : []));

test('the curve goes round once: 0° at north and south, most to the east at 90°, to the west at 270°', () => {
  const [path = '', ...others] = curveOf(drawn([]));
  expect(others).toEqual([]);
  // every knot ends a step: its last two figures
  const knots = path
    .split(/[MC]/)
    .slice(1)
    .map((step) => step.split(' ').slice(-2).map(Number));
  const [first, ninety, south, west, last] = [0, 6, 12, 18, 24].map((index) => knots[index] ?? []);
  expect(knots).toHaveLength(25);
  expect([first?.[1], south?.[1], last?.[1]]).toEqual([21, 21, 21]);
  expect([ninety?.[1], west?.[1]]).toEqual([4, 38]);
  expect([first?.[0], last?.[0]]).toEqual([15, 114]);
});

test('points as read stand where the curve would have them, and the scale grows with the largest', () => {
  const circles = drawn([{ headingDeg: 90, deviationDeg: 3 }]).shapes.filter(({ kind }) => kind === 'circle');
  expect(circles).toMatchObject([{ xMm: 15 + 99 / 4, yMm: 4 }]);
  const words = (points: Parameters<typeof drawn>[0]) =>
    drawn(points).shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
  expect(words([])).toEqual(['3° E', '0°', '3° W', '000°', '090°', '180°', '270°', '360°']);
  expect(words([{ headingDeg: 200, deviationDeg: -7.2 }])).toContain('8° W');
});

test('without a curve the points stand alone', () => {
  expect(curveOf(drawn([{ headingDeg: 0, deviationDeg: 1 }], []))).toEqual([]);
});
