import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Way } from './boat-schema.ts';
import { walkingOrder } from './walking-order.ts';

const way = (id: string, a: string, b: string): Way => ({
  id,
  ends: [a, b],
  length: { valueM: 1, how: 'taped' },
  kind: 'open',
  known: 'seen',
});

test('a cable that goes round a loop is walked in the first of its orders', () => {
  const ways = [way('d', 'x', 'z'), way('c', 'x', 'y'), way('b', 'y', 'x'), way('a', 'w', 'x')];
  expect(walkingOrder(ways, { from: 'w', to: 'z' })).toEqual(['a', 'b', 'c', 'd']);
});

test('ways that lead elsewhere are no path', () => {
  const ways = [way('a', 'w', 'x'), way('b', 'x', 'y')];
  expect(walkingOrder(ways, { from: 'w', to: 'x' })).toBeUndefined();
  expect(walkingOrder(ways, { from: 'y', to: 'z' })).toBeUndefined();
  expect(walkingOrder([], { from: 'w', to: 'x' })).toBeUndefined();
  expect(walkingOrder([], { from: 'w', to: 'w' })).toEqual([]);
});

test('a knot of ways that cannot be walked is given up soon', () => {
  const ways = Array.from({ length: 40 }, (_, at) => way(`w${at}`, `p${at % 5}`, `p${(at + 1) % 5}`));
  expect(walkingOrder(ways, { from: 'p0', to: 'nowhere' })).toBeUndefined();
});

test('a plain path is found from whatever order its ways are in', () => {
  const path = Array.from({ length: 12 }, (_, at) => way(`w${at}`, `p${at}`, `p${at + 1}`));
  fc.assert(
    fc.property(fc.shuffledSubarray(path, { minLength: path.length }), (ways) => {
      expect(walkingOrder(ways, { from: 'p0', to: 'p12' })).toEqual(path.map((entry) => entry.id));
    }),
  );
});
