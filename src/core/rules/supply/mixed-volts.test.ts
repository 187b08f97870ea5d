import { expect, test } from 'vitest';
import { mixedVolts } from './mixed-volts.ts';
import { converter, startBank, subPanel, supplyFindings, withSupply } from './supply-case.test-helper.ts';

const bankOf24 = { ...startBank('apart'), id: 'high', nominalV: 24 };

test('one charger for banks of two voltages is a fault, for two of one voltage it is none', () => {
  const charging = (...charges: string[]) =>
    withSupply((_, __, boat) => {
      boat.supply.banks.push(bankOf24, { ...startBank('apart'), id: 'low' });
      boat.supply.chargers = [{ id: 'alternator', place: 'locker', kind: 'alternator', charges }];
    });
  expect(supplyFindings(mixedVolts, charging('house', 'low'))).toEqual([]);
  expect(supplyFindings(mixedVolts, charging('house', 'high'))).toMatchObject([
    { level: 'fault', about: ['alternator', 'high', 'house'] },
  ]);
});

test('a unit fed at 12 and at 24 V is a danger', () => {
  const both = withSupply((_, __, boat) => {
    boat.supply.banks.push(bankOf24);
    boat.supply.panels.push(subPanel('high-panel', 'high', ['display.dc']));
  });
  expect(supplyFindings(mixedVolts, both)).toMatchObject([
    { level: 'danger', about: ['display', 'high-panel', 'main-panel'] },
  ]);
});

test('a panel behind a converter has the volts of the converter, and may feed what else hangs on 12 V', () => {
  const converted = withSupply((_, panel, boat) => {
    boat.supply.dcdc.push({ ...converter('conv'), outV: 13.8 });
    panel.circuits.push({ id: 'to-conv', ratingA: 10, kind: 'fuse', feeds: ['conv'] });
    boat.supply.panels.push(subPanel('low', 'conv', ['display.dc']));
  });
  expect(supplyFindings(mixedVolts, converted)).toEqual([]);
});

test.each([
  ['relay', 1],
  ['dcdc', 0],
  ['apart', 0],
] as const)('a starting bank of 24 V parted by %s from a house of 12 V: %i fault', (partedBy, count) => {
  const boat = withSupply((_, __, own) => {
    own.supply.banks.push({ ...bankOf24, partedBy });
  });
  expect(supplyFindings(mixedVolts, boat)).toHaveLength(count);
});
