import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { typicalPrices } from '../facts/prices.ts';
import { priceList, unitPrice } from './price-list.ts';

const { source: _, byGrade: __, ...usual } = typicalPrices;
const listOf = (prices?: object) =>
  priceList(aBoat().with(prices === undefined ? {} : { prices: { ...usual, ...prices } }).boat);
const radio = { id: 'vhf-dsc-bus', kind: 'vhf-radio' };

test('usual prices are in euros, and an owner’s own item comes before them', () => {
  expect(unitPrice(listOf(), radio)).toBe(45_000);
  expect(unitPrice(listOf({ items: { 'unit-vhf-dsc-bus': 39_900 } }), radio)).toBe(39_900);
});

test('in another currency a usual price is unknown, and what the owner’s list names is not', () => {
  const list = listOf({ currency: 'USD', tee: 1900 });
  expect(unitPrice(list, radio)).toBeUndefined();
  expect(list.known('pair', 'pair-cable', list.perM('pair'))).toBeUndefined();
  expect(list.known('drop', 'light-drop-cable', list.perM('drop'))).toBe(usual.dropPerM);
  expect(list.own('micro-tee', list.tee)).toBe(1900);
});

test('a kind of unit without a usual price has none', () => {
  expect(unitPrice(listOf(), { id: 'engine-senders', kind: 'engine' })).toBeUndefined();
});
