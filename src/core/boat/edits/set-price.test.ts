import { expect, test } from 'vitest';
import { typicalPrices } from '../../facts/prices.ts';
import { priceList } from '../../prices/price-list.ts';
import { aBoat } from '../a-boat.test-helper.ts';
import { edits } from './index.ts';

const tern = aBoat().boat;
const { 'set-price': setPrice, 'set-quote': setQuote } = edits;

test('a price of an hour brings the usual prices with it, and changes no other', () => {
  const after = setPrice.apply(tern, { of: 'hour', each: 9000 });
  expect(after.prices).toMatchObject({ hour: 9000, currency: 'EUR' });
  const [before, now] = [tern, after].map(priceList);
  for (const grade of ['light', 'mid', 'heavy'] as const)
    expect(now?.perM('trunk', grade)).toBe(before?.perM('trunk', grade));
  expect(now?.tee).toBe(typicalPrices.tee);
  expect(now?.each('micro-tee', 2200)).toBe(before?.each('micro-tee', 2200));
});

test('an item gets a price of its own, another in its place, and none again', () => {
  const first = setPrice.apply(tern, { of: 'item', item: 'micro-tee', each: 1900 });
  expect(priceList(first).own('micro-tee', 2200)).toBe(1900);
  const second = setPrice.apply(first, { of: 'item', item: 'micro-tee', each: 0 });
  expect(priceList(second).own('micro-tee', 2200)).toBe(0);
  const none = setPrice.apply(second, { of: 'item', item: 'micro-tee' });
  expect(none.prices?.items).toBeUndefined();
  expect(() => setPrice.apply(tern, { of: 'item', item: 'Not an item', each: 5 })).toThrow();
});

test('terms of a quote are put in whole, and taken out with nothing said', () => {
  const told = setQuote.apply(tern, { by: 'owner', exclusions: ['Painting.'] });
  expect(setQuote.apply(told, { contingencyPct: 10 }).quote).toEqual({ contingencyPct: 10 });
  expect(Object.hasOwn(setQuote.apply(told, {}), 'quote')).toBe(false);
  const twice = ['a', 'b'].map((reason) => ({ task: 'survey', eachH: 1, reason }));
  expect(() => setQuote.apply(tern, { hours: twice })).toThrow('The hours of a task are given once.');
});
