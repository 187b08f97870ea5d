import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LineEntry, ShoppingEntry } from '../plan-shape.ts';
import { boughtBeyond, phaseOrders, sumOfItems, type WholeOrder } from './phase-orders.ts';

const entry = (fields: Pick<ShoppingEntry, 'id' | 'count' | 'by'>): ShoppingEntry => ({
  item: fields.id,
  kind: 'cable',
  each: 100,
  for: [],
  why: '',
  sure: true,
  ...fields,
});
const pieces = (counts: Readonly<Record<string, number>>): WholeOrder => ({
  shopping: Object.entries(counts).map(([id, count]) => entry({ id, count, by: 'piece' })),
  lines: [],
});
const cut = (lengths: Readonly<Record<string, number>>): WholeOrder => ({
  shopping: [
    entry({ id: 'pair', count: Math.ceil(Object.values(lengths).reduce((sum, m) => sum + m, 0)), by: 'metre' }),
  ],
  lines: Object.entries(lengths).map(
    ([id, lengthM]): LineEntry => ({
      id,
      kind: 'pair',
      from: '',
      to: '',
      places: [],
      ways: [],
      lengthM,
      longestM: lengthM,
      guessed: false,
      pieces: [{ lengthM, made: true, item: 'pair' }],
    }),
  ),
});
const counts = (wholes: readonly WholeOrder[]): Record<string, number>[] =>
  phaseOrders(wholes).map((order) => Object.fromEntries(order.map(({ id, count }) => [id, count])));

describe('what each phase buys', () => {
  test('the first buys all of its order, the next only what is wanted beyond it', () => {
    expect(counts([pieces({ tee: 3, cap: 2 }), pieces({ tee: 5, cap: 1 })])).toEqual([{ tee: 3, cap: 2 }, { tee: 2 }]);
  });

  test('a cable that has grown too short is bought again in one piece, and one that is long enough is not', () => {
    expect(counts([cut({ a: 3, b: 4 }), cut({ a: 5, b: 4 })])).toEqual([{ pair: 7 }, { pair: 5 }]);
    expect(counts([cut({ a: 3, b: 4 }), cut({ a: 2, b: 4 })])).toEqual([{ pair: 7 }, {}]);
  });

  test('a cable of one line does not serve another', () => {
    expect(counts([cut({ a: 3 }), cut({ b: 3 })])).toEqual([{ pair: 3 }, { pair: 3 }]);
  });

  test('a metre begun in one phase is used up in the next', () => {
    expect(counts([cut({ a: 2.2 }), cut({ a: 2.2, b: 0.7 })])).toEqual([{ pair: 3 }, {}]);
  });
});

describe('over all phases', () => {
  const someOrder = fc
    .dictionary(fc.constantFrom('tee', 'cap', 'drop'), fc.integer({ min: 1, max: 9 }), { noNullPrototype: true })
    .map(pieces);
  const someCuts = fc
    .dictionary(
      fc.constantFrom('a', 'b', 'c'),
      fc.integer({ min: 1, max: 80 }).map((tenths) => tenths / 10),
      {
        noNullPrototype: true,
        minKeys: 1,
      },
    )
    .map(cut);
  const someWholes = fc.oneof(
    fc.array(someOrder, { minLength: 1, maxLength: 4 }),
    fc.array(someCuts, { minLength: 1, maxLength: 4 }),
  );

  test('the orders add up to the order at once and what was bought beyond it, and never to less', () => {
    fc.assert(
      fc.property(someWholes, (wholes) => {
        const orders = phaseOrders(wholes);
        const atOnce = wholes.at(-1)?.shopping ?? [];
        const more = boughtBeyond(orders, atOnce);
        expect(sumOfItems(orders.flat()).cost).toBe(sumOfItems(atOnce).cost + sumOfItems(more).cost);
        expect(more.every(({ count }) => count > 0)).toBe(true);
      }),
    );
  });

  test('one phase buys nothing twice, nor does a phase that takes what the one before took', () => {
    fc.assert(
      fc.property(fc.oneof(someOrder, someCuts), (whole) => {
        expect(boughtBeyond(phaseOrders([whole]), whole.shopping)).toEqual([]);
        expect(phaseOrders([whole, whole])[1]).toEqual([]);
      }),
    );
  });
});
