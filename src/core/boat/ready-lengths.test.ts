import { expect, test } from 'vitest';
import { typicalPrices } from '../facts/prices.ts';
import { aBoat } from './a-boat.test-helper.ts';
import { readyLengthsMm } from './ready-lengths.ts';

const { source: _, ...usual } = typicalPrices;
const withItems = (items: Record<string, number>) => aBoat().with({ prices: { ...usual, items } }).boat;

test('drops are sold in 0.5, 1, 2 and 5 m, and trunk in 10 m too, until somebody has a list of their own', () => {
  expect(readyLengthsMm({ boat: {}, kind: 'drop' })).toEqual([500, 1000, 2000, 5000]);
  expect(readyLengthsMm({ boat: {}, kind: 'trunk' })).toEqual([500, 1000, 2000, 5000, 10_000]);
  expect(readyLengthsMm({ boat: {}, kind: 'ethernet' })).toEqual([]);
});

test('the lengths of one’s own list take the place of the usual ones, kind by kind', () => {
  const boat = withItems({ 'light-drop-4000mm': 3000, 'mid-drop-1500mm': 2000, 'ethernet-5000mm': 2500 });
  expect(readyLengthsMm({ boat, kind: 'drop' })).toEqual([1500, 4000]);
  expect(readyLengthsMm({ boat, kind: 'trunk' })).toEqual([500, 1000, 2000, 5000, 10_000]);
  expect(readyLengthsMm({ boat, kind: 'ethernet' })).toEqual([5000]);
});
