import { expect, test } from 'vitest';
import type { Order } from '../boat/boat-schema.ts';
import type { ShoppingEntry } from '../plan-shape.ts';
import { heldUp } from './held-up.ts';

const item = (id: string, order?: Omit<Order, 'item'>): ShoppingEntry => ({
  id,
  item: id,
  kind: 'unit',
  count: 1,
  by: 'piece',
  for: [`${id}-line`],
  why: 'So.',
  sure: true,
  ...(order === undefined ? {} : { order: { item: id, ...order } }),
});

test('the longest to come stands first, what is here is awaited no more, and what nobody said days of is counted', () => {
  const { awaited, unknown } = heldUp(
    [
      item('tee', { state: 'ordered', leadDays: 3 }),
      item('drive', { state: 'order', leadDays: 42 }),
      item('radio', { state: 'arrived', leadDays: 90 }),
      item('cable'),
    ],
    '2027-03-01',
  );
  expect(awaited.map(({ id }) => id)).toEqual(['drive', 'tee']);
  expect(unknown).toBe(1);
});

test('what was to be ordered by a day that is past is late, and comes so many days from today', () => {
  const of = (state: Order['state']) =>
    heldUp([item('drive', { state, leadDays: 42, orderBy: '2027-03-01' })], '2027-03-10');
  expect(of('order')).toMatchObject({ awaited: [{ isLate: true, comes: '2027-04-21' }], lastDay: '2027-04-21' });
  expect(of('ordered')).toMatchObject({ awaited: [{ isLate: false, comes: '2027-04-12' }] });
  expect(
    heldUp([item('drive', { state: 'order', leadDays: 42, orderBy: '2027-03-10' })], '2027-03-10').awaited[0]?.isLate,
  ).toBe(false);
});
