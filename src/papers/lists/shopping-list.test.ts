import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import { tableCsv } from '../table/table-csv.ts';
import { buyingList } from './buying-list.ts';
import { shoppingText } from './shopping-list.ts';
import { tapeList } from './tape-list.ts';
import { tapeText } from './tape-text.ts';

const guessedBoat = aBoat().change((boat) => {
  for (const way of boat.ways) {
    if (way.id === 'locker-helm') way.length = { valueM: 2.2, how: 'guessed', lessM: 0.2, moreM: 3 };
    if (way.id === 'locker-stern') way.known = 'assumed';
  }
}).boat;
const textOf = (boat: Boat): string => shoppingText(boat, plan(boat, new Map()));

test('the shopping list says what a thing is for, why, in both units, and that it is sure', () => {
  const text = textOf(aBoat().boat);
  expect(text).toContain('micro terminator, male: 16.00.');
  expect(text).toMatch(/drop cable, ready-made, \d+(\.\d+)? m \(\d+ (ft|in)/);
  expect(text).toContain('Labelled at both ends, at each bulkhead, at the joints of a mast. Sure.');
  expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
});

test('where an item stands is said with it, and only there', () => {
  const orders: Boat['orders'] = [
    { item: 'micro-tee', state: 'ordered', supplier: 'Harbour Shop', leadDays: 14, orderBy: '2027-03-31' },
  ];
  const text = textOf(aBoat().with({ orders }).boat).replace(/\s+/g, ' ');
  expect(text).toContain('It is ordered from Harbour Shop, 14 days to come, order by 2027-03-31.');
  expect(text.match(/It is ordered/g)).toHaveLength(1);
});

test('the CSV has a row for each item, with a plain count', () => {
  const planned = plan(aBoat().boat, new Map());
  const rows = tableCsv(buyingList(aBoat().boat, planned)).trimEnd().split('\r\n');
  expect(rows).toHaveLength(planned.shopping.length + 1);
  expect(rows.find((row) => row.endsWith(',micro-tee'))).toMatch(/,micro tee,\d+,piece,22\.00,/);
});

test('the tape list tells a guess from a way nobody has seen, dearest first, and what is so when it is shut', () => {
  const planned = plan(guessedBoat, new Map());
  const stakes = planned.tape.map(({ atStake }) => atStake);
  expect(stakes).toEqual([...stakes].sort((a, b) => b - a));
  const text = tapeText(guessedBoat, planned).replace(/\s+/g, ' ');
  expect(text).toContain('Tape the way from electrical locker to helm dash. At stake:');
  expect(text).toContain('Prove the way from electrical locker to stern rail: pull a messenger line through');
  expect(text).toContain('Shut: no other way leads there for');
  expect(tableCsv(tapeList(guessedBoat, planned)).trimEnd().split('\r\n')).toHaveLength(planned.tape.length + 1);
});

test('a boat with everything taped and seen has nothing on its tape list', () => {
  const planned = plan(aBoat().boat, new Map());
  expect(planned.tape).toEqual([]);
  expect(tapeText(aBoat().boat, planned)).toContain('Nothing that is not yet taped or seen could change the order.');
});
