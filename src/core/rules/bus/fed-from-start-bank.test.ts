import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { fedFromStartBank } from './fed-from-start-bank.ts';

const fedBy = (purpose: 'house' | 'start' | 'both') =>
  aBoat().change((boat) => {
    for (const bank of boat.supply.banks) bank.for = purpose;
  }).boat;

test('a bus on the house bank, or on one bank for all, passes', () => {
  expect(findingsOf(fedFromStartBank, { boat: fedBy('house') })).toEqual([]);
  expect(findingsOf(fedFromStartBank, { boat: fedBy('both') })).toEqual([]);
});

test('a bus on the start bank is a fault about both', () => {
  expect(findingsOf(fedFromStartBank, { boat: fedBy('start') })).toMatchObject([
    { level: 'fault', about: ['house', 'nav'] },
  ]);
});
