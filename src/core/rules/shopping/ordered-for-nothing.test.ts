import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { ShoppingEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { orderedForNothing } from './ordered-for-nothing.ts';

const tee: ShoppingEntry = {
  id: 'micro-tee',
  item: 'micro tee',
  kind: 'bus-part',
  count: 7,
  by: 'piece',
  for: ['nav'],
  why: 'One for each unit.',
  sure: true,
};
const found = (...orders: NonNullable<Boat['orders']>) =>
  findingsOf(orderedForNothing, { boat: aBoat().with({ orders }).boat, plan: { shopping: [tee] } });

test('a drop of a length no line takes any more is found, whether it is on its way or here', () => {
  expect(found({ item: 'light-drop-5000mm', state: 'ordered' })).toMatchObject([
    { level: 'doubt', about: ['light-drop-5000mm'], says: expect.stringContaining('is ordered') },
  ]);
  expect(found({ item: 'light-drop-5000mm', state: 'arrived' })).toMatchObject([
    { cure: expect.stringContaining('Send it back') },
  ]);
});

test('what the plan needs, what lies at hand and what went back pass', () => {
  expect(
    found(
      { item: 'micro-tee', state: 'ordered' },
      { item: 'light-drop-5000mm', state: 'have' },
      { item: 'light-drop-2000mm', state: 'returned' },
    ),
  ).toEqual([]);
});
