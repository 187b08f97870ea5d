import fc from 'fast-check';
import { expect, test } from 'vitest';
import { distanceToRoute, type Spot } from './distance-to-route.ts';

const spot = (xM: number, yM = 0, zM = 0): Spot => ({ xM, yM, zM });

test('beside a stretch the distance is square to it, past its end that to the end (a 3-4-5 triangle)', () => {
  expect(distanceToRoute(spot(5, 2), [spot(0), spot(10)])).toBe(2);
  expect(distanceToRoute(spot(13, 4), [spot(0), spot(10)])).toBe(5);
  expect(distanceToRoute(spot(3, 4), [spot(0)])).toBe(5);
  expect(distanceToRoute(spot(3, 4), [spot(0), spot(0)])).toBe(5);
});

test('a route of no place is endlessly far', () => {
  expect(distanceToRoute(spot(0), [])).toBe(Number.POSITIVE_INFINITY);
});

test('no point of the route is nearer, and the route walked backwards is as far', () => {
  const metre = fc.double({ min: -20, max: 20, noNaN: true });
  const anySpot = fc.record({ xM: metre, yM: metre, zM: metre });
  fc.assert(
    fc.property(anySpot, fc.array(anySpot, { minLength: 2, maxLength: 6 }), (from, route) => {
      const found = distanceToRoute(from, route);
      const sampled = route.slice(1).flatMap((b, at) => {
        const a = route[at] ?? b;
        return Array.from({ length: 101 }, (_, step) => {
          const share = step / 100;
          return Math.hypot(
            a.xM + share * (b.xM - a.xM) - from.xM,
            a.yM + share * (b.yM - a.yM) - from.yM,
            a.zM + share * (b.zM - a.zM) - from.zM,
          );
        });
      });
      const nearest = Math.min(...sampled);
      expect(found).toBeLessThanOrEqual(nearest + 1e-9);
      // a hundredth of the longest stretch is 0.7 m at most, and the true nearest lies within half of that of a sample
      expect(nearest - found).toBeLessThan(0.36);
      expect(distanceToRoute(from, [...route].reverse())).toBeCloseTo(found, 9);
    }),
  );
});
