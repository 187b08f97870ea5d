import { expect, test } from 'vitest';
import { startBankFeed } from './start-bank-feed.ts';
import { converter, startBank, subPanel, supplyFindings, withSupply } from './supply-case.test-helper.ts';

test('one battery for all is advice', () => {
  expect(supplyFindings(startBankFeed, withSupply())).toMatchObject([{ level: 'advice', about: ['house'] }]);
});

test('a house bank, and a starting bank with nothing on it, pass', () => {
  const parted = withSupply((bank, _, boat) => {
    bank.for = 'house';
    boat.supply.banks.push(startBank('apart'));
  });
  expect(supplyFindings(startBankFeed, parted)).toEqual([]);
});

test('units on the starting bank are a fault, and on one that does both beside others a doubt', () => {
  const on = (purpose: 'start' | 'both') =>
    withSupply((bank, _, boat) => {
      bank.for = purpose;
      boat.supply.banks.push({ ...startBank(), for: 'house' });
    });
  expect(supplyFindings(startBankFeed, on('start'))).toMatchObject([
    { level: 'fault', about: ['display', 'house', 'radio'] },
  ]);
  expect(supplyFindings(startBankFeed, on('both'))).toMatchObject([{ level: 'doubt', about: ['house'] }]);
});

test('a converter between makes no house bank of it', () => {
  const converted = withSupply((bank, panel, boat) => {
    bank.for = 'start';
    boat.supply.banks.push({ ...startBank(), for: 'house' });
    boat.supply.dcdc.push(converter('conv'));
    panel.from = 'conv';
    boat.supply.panels.push(subPanel('engine-panel', 'house', ['conv']));
  });
  expect(supplyFindings(startBankFeed, converted)).toMatchObject([
    { level: 'fault', about: ['display', 'house', 'radio'] },
  ]);
});

test('a bus alone has a rule of its own', () => {
  const bus = withSupply((bank, panel) => {
    bank.for = 'start';
    panel.circuits.splice(1);
  });
  expect(supplyFindings(startBankFeed, bus)).toEqual([]);
});
