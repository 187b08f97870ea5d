import { expect, test } from 'vitest';
import type { Bank } from '../../boat/supply.ts';
import { startNotIsolated } from './start-not-isolated.ts';
import { startBank, supplyFindings, withSupply } from './supply-case.test-helper.ts';

const withStart = (partedBy?: NonNullable<Bank['partedBy']>, nominalV = 12) =>
  withSupply((bank, _, boat) => {
    bank.for = 'house';
    boat.supply.banks.push({ ...startBank(partedBy), nominalV });
  });

test.each(['switch', 'relay', 'diode', 'dcdc', 'apart'] as const)('parted by %s it passes', (partedBy) => {
  expect(supplyFindings(startNotIsolated, withStart(partedBy))).toEqual([]);
});

test('parted by nothing is a fault, and a doubt where nobody has said', () => {
  expect(supplyFindings(startNotIsolated, withStart('nothing'))).toMatchObject([{ level: 'fault', about: ['engine'] }]);
  expect(supplyFindings(startNotIsolated, withStart())).toMatchObject([{ level: 'doubt', about: ['engine'] }]);
});

test('another voltage, and one battery for all, are other matters', () => {
  expect(supplyFindings(startNotIsolated, withStart(undefined, 24))).toEqual([]);
  expect(supplyFindings(startNotIsolated, withSupply())).toEqual([]);
});
