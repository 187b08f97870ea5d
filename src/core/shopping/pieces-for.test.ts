import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { ReadyLength } from '../prices/price-list.ts';
import { piecesFor } from './pieces-for.ts';

const shelf: readonly ReadyLength[] = [
  { mm: 500, cost: 1410 },
  { mm: 1000, cost: 1620 },
  { mm: 2000, cost: 2040 },
  { mm: 5000, cost: 3300 },
];
const made = { costPerM: 420, endsCost: 5600 };
const lengths = (neededMm: number, ready = shelf): readonly number[] =>
  piecesFor({ neededMm, ready })?.pieces.map(({ mm }) => mm) ?? [];

test('one piece that covers is bought before two that cover more closely at more cost', () => {
  expect(lengths(2000)).toEqual([2000]);
  expect(lengths(2001)).toEqual([5000]);
  expect(lengths(5001)).toEqual([5000, 500]);
});

test('where nothing ready-made is sold the cable is made up to the length, and where nothing is sold there is no answer', () => {
  expect(piecesFor({ neededMm: 7300, ready: [], made })).toEqual({ pieces: [{ mm: 7300, made: true }], cost: 8666 });
  expect(piecesFor({ neededMm: 7300, ready: [] })).toBeUndefined();
});

test('a cable made up is taken where the shelf would cost more', () => {
  const ready = [{ mm: 500, cost: 1410 }];
  expect(piecesFor({ neededMm: 4000, ready, made })?.pieces).toEqual([{ mm: 4000, made: true }]);
  expect(piecesFor({ neededMm: 900, ready, made })?.pieces).toHaveLength(2);
});

/** The least cost to cover a length, by every number of every size. */
const leastCost = (neededMm: number, ready: readonly ReadyLength[]): number => {
  const [first, ...rest] = ready;
  if (neededMm <= 0) return 0;
  if (first === undefined) return Number.POSITIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  for (let count = 0; count <= Math.ceil(neededMm / first.mm); count += 1) {
    least = Math.min(least, count * first.cost + leastCost(neededMm - count * first.mm, rest));
  }
  return least;
};

const shelves = fc.array(
  fc.record({ mm: fc.integer({ min: 300, max: 9000 }), cost: fc.integer({ min: 100, max: 9000 }) }),
  { minLength: 1, maxLength: 4 },
);

test('on any shelf and for any length the pieces cover it, and nothing that covers it costs less', () => {
  fc.assert(
    fc.property(shelves, fc.integer({ min: 1, max: 9000 }), fc.boolean(), (ready, neededMm, mayMake) => {
      const found = piecesFor({ neededMm, ready, ...(mayMake ? { made } : {}) });
      const madeCost = mayMake
        ? made.endsCost + Math.ceil((made.costPerM * neededMm) / 1000)
        : Number.POSITIVE_INFINITY;
      expect(found?.cost).toBe(Math.min(madeCost, leastCost(neededMm, ready)));
      expect(found?.pieces.reduce((sumMm, { mm }) => sumMm + mm, 0)).toBeGreaterThanOrEqual(neededMm);
    }),
  );
});

test('a longer line never costs less', () => {
  fc.assert(
    fc.property(shelves, fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 0, max: 2000 }), (ready, mm, moreMm) => {
      const cost = (neededMm: number): number => piecesFor({ neededMm, ready, made })?.cost ?? 0;
      expect(cost(mm + moreMm)).toBeGreaterThanOrEqual(cost(mm));
    }),
  );
});
