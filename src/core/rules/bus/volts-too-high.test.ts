import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { voltsTooHigh } from './volts-too-high.ts';

const onBank = (nominalV: number) =>
  aBoat().change((boat) => {
    for (const bank of boat.supply.banks) bank.nominalV = nominalV;
  });

test('a bus on a bank of 12 V, or just at the limit of 16 V, passes', () => {
  expect(findingsOf(voltsTooHigh, { boat: onBank(12).boat })).toEqual([]);
  expect(findingsOf(voltsTooHigh, { boat: onBank(16).boat })).toEqual([]);
});

test('a bus on a bank of 24 V, or just past the limit, is a fault about bus and circuit', () => {
  expect(findingsOf(voltsTooHigh, { boat: onBank(24).boat })).toMatchObject([
    { level: 'fault', about: ['bus-circuit', 'nav'], measured: { value: 24, unit: 'V' }, limit: { value: 16 } },
  ]);
  expect(findingsOf(voltsTooHigh, { boat: onBank(16.1).boat })).toHaveLength(1);
});

test('a bus on a converter from 24 V down to 13.8 V passes', () => {
  const boat = onBank(24).change(({ supply }) => {
    supply.dcdc.push({
      id: 'down',
      place: 'locker',
      outV: 13.8,
      ratedA: 5,
      efficiencyPct: 90,
      isolated: true,
    });
    for (const panel of supply.panels) panel.from = 'down';
  }).boat;
  expect(findingsOf(voltsTooHigh, { boat })).toEqual([]);
});
