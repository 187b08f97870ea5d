import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Way } from '../boat/boat-schema.ts';
import { lineKinds } from '../boat/line-kinds.ts';
import { makeRouter } from './routes.ts';
import { wayCostMm } from './way-cost.ts';

const ways: Way[] = aBoat().boat.ways;
const dry = ways.find(({ id }) => id === 'locker-helm') ?? ways[0];

const costOf = (own: Partial<Way>, { kind = 'pair', mm = 1000 }: { kind?: 'pair' | 'feed'; mm?: number } = {}) => {
  if (dry === undefined) throw new Error('The small boat has no ways.');
  return wayCostMm({ index: indexBoat(aBoat().boat), way: { ...dry, ...own }, kind, mm });
};

test('a metre in the dry costs a metre, in the engine space or the bilge three, by this project’s choice', () => {
  expect([costOf({}), costOf({ exposure: 'engine' }), costOf({ exposure: 'bilge' })]).toEqual([1000, 3000, 3000]);
});

test('a pair beside the radio’s lead costs four metres for each, a feed beside it one; at the compass it is the feed', () => {
  expect([costOf({ near: ['hf-coax'] }), costOf({ near: ['hf-coax'] }, { kind: 'feed' })]).toEqual([4000, 1000]);
  expect([costOf({ near: ['steering-compass'] }), costOf({ near: ['steering-compass'] }, { kind: 'feed' })]).toEqual([
    1000, 3000,
  ]);
});

test('half an hour of work is worth the cable it would buy: 7.8 m at 75 an hour and 4.80 a metre', () => {
  expect(costOf({ hours: 0.5 })).toBe(8813);
});

test('a bulkhead that wants a rated transit costs two metres, a plain one nothing', () => {
  expect([costOf({ through: 'watertight' }), costOf({ through: 'fire' }), costOf({ through: 'plain' })]).toEqual([
    3000, 3000, 1000,
  ]);
});

test('a pair goes round an engine space where that is not three times as far, and keeps its true length', () => {
  const round = (lengthM: number) =>
    makeRouter(
      indexBoat(
        aBoat().change((boat) => {
          for (const way of boat.ways) {
            if (way.id === 'locker-helm') way.exposure = 'engine';
            if (way.id === 'locker-mast') way.length = { valueM: lengthM, how: 'taped' };
          }
        }).boat,
      ),
    ).cheapest({ kind: 'pair', from: 'locker', to: 'helm' });
  expect(round(4)).toMatchObject({ ways: ['locker-mast', 'helm-mast'], mm: 5900 });
  expect(round(5)).toMatchObject({ ways: ['locker-helm'], mm: 2200 });
});

const anyWay = fc.record({
  exposure: fc.constantFrom('dry', 'damp', 'spray', 'weather', 'engine', 'bilge' as const),
  near: fc.subarray(['mains', 'hf-coax', 'starter-cable', 'steering-compass']),
  hours: fc.integer({ min: 0, max: 20 }).map((quarters) => quarters / 4),
});

test('a longer way is never cheaper, nor is one beside more that disturbs it', () => {
  if (dry === undefined) throw new Error('The small boat has no ways.');
  const index = indexBoat(aBoat().boat);
  fc.assert(
    fc.property(anyWay, fc.constantFrom(...lineKinds), fc.integer({ min: 1, max: 90_000 }), (own, kind, mm) => {
      const cost = (way: Partial<Way>, lengthMm: number): number =>
        wayCostMm({ index, way: { ...dry, ...way }, kind, mm: lengthMm });
      expect(cost(own, mm + 1)).toBeGreaterThan(cost(own, mm));
      expect(cost(own, mm)).toBeGreaterThanOrEqual(cost({ ...own, near: own.near.slice(1) }, mm));
      expect(cost(own, mm)).toBeGreaterThanOrEqual(mm);
    }),
  );
});

test('a way that is forbidden to a line never makes its route cheaper', () => {
  const index = indexBoat(aBoat().boat);
  const costAlong = (routeWays: readonly string[] | undefined): number =>
    routeWays === undefined
      ? Number.POSITIVE_INFINITY
      : routeWays.reduce((sum, id) => {
          const way = index.ways.get(id);
          return way === undefined ? sum : sum + wayCostMm({ index, way, kind: 'pair', mm: 1000 * way.length.valueM });
        }, 0);
  const ask = { kind: 'pair', from: 'stern-rail', to: 'helm' } as const;
  const free = costAlong(makeRouter(index).cheapest(ask)?.ways);
  for (const { id } of index.boat.ways) {
    const without = aBoat().change((boat) => {
      for (const way of boat.ways) if (way.id === id) way.allows = ['coax'];
    });
    expect(costAlong(makeRouter(indexBoat(without.boat)).cheapest(ask)?.ways)).toBeGreaterThanOrEqual(free);
  }
});
