import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { typicalPrices } from '../facts/prices.ts';
import { priceList } from '../prices/price-list.ts';
import { feedCable } from './feed-cable.ts';
import type { SizedWire } from './line-cutter.ts';

const line = { id: 'feed:display.supply~main-panel' };
const cableOf = (wire: SizedWire | undefined, items?: Record<string, number>) =>
  feedCable(
    {
      prices: priceList(aBoat().with({ prices: { ...typicalPrices, ...(items === undefined ? {} : { items }) } }).boat),
      feeds: new Map(wire === undefined ? [] : [[line.id, wire]]),
    },
    line,
  );

test('cable is bought by the size that was picked, with the gauge that is not thinner (14 AWG is 2.08 mm², 12 AWG 3.31)', () => {
  expect(cableOf({ wire: 'picked', areaMm2: 2.5 })).toMatchObject({
    id: 'feed-cable-2x2-5',
    words: 'two-core power cable, 2 × 2.5 mm² or 12 AWG',
  });
  expect(cableOf({ wire: 'settled', areaMm2: 2 })?.words).toContain('14 AWG');
});

test('its price grows with its copper, and the owner’s own price of the size holds before that', () => {
  expect(cableOf({ wire: 'picked', areaMm2: 6 })?.perM).toBe(4 * typicalPrices.feedLeadPerM);
  expect(cableOf({ wire: 'picked', areaMm2: 0.75 })?.perM).toBe(typicalPrices.feedLeadPerM);
  expect(cableOf({ wire: 'picked', areaMm2: 6 }, { 'feed-cable-2x6': 555 })?.perM).toBe(555);
});

test('the lead of a bus, and a feed nobody sized, are bought as before', () => {
  expect(cableOf({ wire: 'bus-cable', areaMm2: 1.31 })).toBeUndefined();
  expect(cableOf({ wire: 'aboard' })).toBeUndefined();
  expect(cableOf(undefined)).toBeUndefined();
});
