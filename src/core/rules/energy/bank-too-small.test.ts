import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { planEnergy } from '../../plan-energy.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { bankTooSmall } from './bank-too-small.ts';

const found = (boat: Boat) => {
  const index = indexBoat(boat);
  return findingsOf(bankTooSmall, { boat, plan: planEnergy({ index, joinsAt: (at) => joinsOf(index, at) }) });
};

/** The Tern with the radio, 0.6 A, on for so many hours of each of so many days at anchor. */
const radioFor = (hours: number, chargedAfter: number, capacityAh = 110) =>
  aBoat()
    .with({
      days: [
        {
          id: 'weekend',
          name: 'Weekend',
          like: 'anchor',
          hours: [
            { unit: 'radio', hours },
            { unit: 'display', hours: 0 },
            { unit: 'compass', hours: 0 },
            { unit: 'converter', hours: 0 },
            { unit: 'gnss', hours: 0 },
          ],
          chargedAfter,
        },
      ],
    })
    .change((boat) => {
      for (const bank of boat.supply.banks) bank.capacityAh = capacityAh;
    });

test('a bank that lasts the days between two charges passes', () => {
  expect(found(aBoat().boat)).toEqual([]);
  // 0.6 A for 24 h and 6 A for 0.1 h: 15 Ah a day, 45 in three days, of 55 that are used
  expect(found(radioFor(24, 3).boat)).toEqual([]);
});

test('one that is drawn below what is used is a fault, with the bank that would last', () => {
  expect(found(radioFor(24, 4).boat)).toMatchObject([
    {
      level: 'fault',
      about: ['house', 'weekend'],
      says: 'In the day “Weekend” (4 times) the bank house gives 60 Ah before it is charged again, and 55 Ah of its 110 Ah are for use; it lasts 3.7 days.',
      measured: { unit: '% of its capacity' },
      limit: { value: 50 },
      cure: 'Switch off what is not needed (most goes to: Old radio 15 Ah), charge more often, or fit at least 120 Ah.',
    },
  ]);
});

test('the usual day at anchor is a doubt: its hours are common practice, not the owner’s', () => {
  const { boat } = aBoat().change((draft) => {
    for (const bank of draft.supply.banks) bank.capacityAh = 15;
  });
  expect(found(boat)).toMatchObject([{ level: 'doubt', about: ['house'] }]);
});

test('the owner’s own share counts', () => {
  const limits = { 'bank-usable-lead': { value: 30, reason: 'charged by engine only' } };
  expect(found({ ...radioFor(24, 3).boat, limits })).toMatchObject([
    { limit: { value: 30, source: 'set by the owner: charged by engine only' } },
  ]);
});
