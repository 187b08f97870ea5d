import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spread } from './spread.ts';

test('two tees that want the same spot step aside by half the gap each', () => {
  expect(
    spread(
      [
        { wishMm: 5, gapMm: 0 },
        { wishMm: 5, gapMm: 4 },
      ],
      { fromMm: 0, toMm: 20 },
    ),
  ).toEqual([3, 7]);
});

test('whoever has room stands where it wants', () => {
  const spots = [10, 20, 30].map((wishMm) => ({ wishMm, gapMm: 5 }));
  expect(spread(spots, { fromMm: 0, toMm: 40 })).toEqual([10, 20, 30]);
});

const spotsArbitrary = fc.array(
  fc.record({ wishMm: fc.integer({ min: -50, max: 250 }), gapMm: fc.integer({ min: 0, max: 9 }) }),
  { minLength: 1, maxLength: 20 },
);

test('every gap is kept, and nothing leaves the sheet when all fit', () => {
  fc.assert(
    fc.property(spotsArbitrary, (spots) => {
      const places = spread(spots, { fromMm: 0, toMm: 200 });
      const least = Math.min(...places);
      expect(least).toBeGreaterThanOrEqual(-1e-9);
      expect(Math.max(...places)).toBeLessThanOrEqual(200 + 1e-9);
      for (const [at, place] of places.entries()) {
        if (at > 0) expect(place - (places[at - 1] ?? 0)).toBeGreaterThanOrEqual((spots[at]?.gapMm ?? 0) - 1e-9);
      }
    }),
    { numRuns: 150 },
  );
});

test('no other placing that keeps the gaps is nearer to the wishes: moving one tee either way is worse', () => {
  fc.assert(
    fc.property(spotsArbitrary, (spots) => {
      const places = spread(spots, { fromMm: -1000, toMm: 1000 });
      const squares = (xs: readonly number[]): number =>
        xs.reduce((sum, x, at) => sum + (x - (spots[at]?.wishMm ?? 0)) ** 2, 0);
      const best = squares(places);
      for (let from = 0; from < places.length; from++) {
        for (let to = from; to < places.length; to++) {
          for (const step of [-0.5, 0.5]) {
            const moved = places.map((x, at) => (at >= from && at <= to ? x + step : x));
            const kept = moved.every((x, at) => at === 0 || x - (moved[at - 1] ?? 0) >= (spots[at]?.gapMm ?? 0));
            if (kept) expect(squares(moved)).toBeGreaterThanOrEqual(best - 1e-6);
          }
        }
      }
    }),
    { numRuns: 60 },
  );
});
