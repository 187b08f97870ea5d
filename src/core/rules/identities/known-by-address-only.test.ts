import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { knownByAddressOnly } from './known-by-address-only.ts';

const recorded = aBoat().sheet('gnss-receiver', (sheet) => {
  sheet.source = 'recording';
});

test('a unit from a recording with its NAME passes, and so do units from sheets', () => {
  expect(
    findingsOf(knownByAddressOnly, { boat: recorded.unit('gnss', { identity: 'c0788c00e7e04312' }).boat }),
  ).toEqual([]);
  expect(findingsOf(knownByAddressOnly)).toEqual([]);
});

test('one without a NAME is a doubt about that unit', () => {
  expect(findingsOf(knownByAddressOnly, { boat: recorded.boat })).toMatchObject([
    { level: 'doubt', about: ['gnss'], measured: { value: 1 } },
  ]);
});
