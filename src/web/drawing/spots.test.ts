import fc from 'fast-check';
import { expect, test } from 'vitest';
import { awayFrom } from './spots.ts';

const at = (x: number, y: number) => ({ x, y });

test('a point beside a stretch is as far as it stands off, one beyond its end as far as the end is', () => {
  const stretch = { from: at(0, 0), to: at(10, 0) };
  expect(awayFrom(stretch, at(5, 3))).toBe(3);
  expect(awayFrom(stretch, at(14, 3))).toBe(5);
  expect(awayFrom(stretch, at(-3, -4))).toBe(5);
  expect(awayFrom({ from: at(2, 2), to: at(2, 2) }, at(5, 6))).toBe(5);
});

test('no point of a stretch is nearer than what is said', () => {
  const px = fc.integer({ min: -200, max: 200 });
  const point = fc.record({ x: px, y: px });
  fc.assert(
    fc.property(point, point, point, fc.double({ min: 0, max: 1, noNaN: true }), (from, to, hand, share) => {
      const on = at(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
      const away = awayFrom({ from, to }, hand);
      expect(away).toBeLessThanOrEqual(Math.hypot(on.x - hand.x, on.y - hand.y) + 1e-9);
      expect(away).toBeCloseTo(awayFrom({ from: to, to: from }, hand), 6);
    }),
  );
});
