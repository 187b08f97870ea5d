import { expect, test } from 'vitest';
import type { ShoppingEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { orderedTooFew } from './ordered-too-few.ts';

const tees: ShoppingEntry = {
  id: 'micro-tee',
  item: 'micro tee',
  kind: 'bus-part',
  count: 7,
  by: 'piece',
  for: ['nav'],
  why: 'One for each unit.',
  sure: true,
};
const found = (order?: ShoppingEntry['order']) =>
  findingsOf(orderedTooFew, { plan: { shopping: [order === undefined ? tees : { ...tees, order }] } });

test('five tees ordered for seven are two too few', () => {
  expect(found({ item: 'micro-tee', state: 'ordered', count: 5 })).toMatchObject([
    { level: 'doubt', about: ['micro-tee'], measured: { value: 5, unit: 'pieces' }, cure: 'Order 2 more.' },
  ]);
});

test('the right count, an order without one, and nothing ordered yet pass', () => {
  expect(found({ item: 'micro-tee', state: 'arrived', count: 7 })).toEqual([]);
  expect(found({ item: 'micro-tee', state: 'ordered' })).toEqual([]);
  expect(found({ item: 'micro-tee', state: 'order', count: 2 })).toEqual([]);
  expect(found()).toEqual([]);
});
