import { expect, test } from 'vitest';
import { rebootsWhileCranking } from './reboots-while-cranking.ts';
import { startBank, supplyFindings, withSupply } from './supply-case.test-helper.ts';

test('units that want more than 9.6 V of a 12 V bank that starts the engine are named, neediest first', () => {
  // public workshop manuals: 9.6 V under half the cold-cranking amperes; the radio wants 11 V, the display 10.8
  expect(supplyFindings(rebootsWhileCranking, withSupply())).toMatchObject([
    { level: 'doubt', about: ['display', 'house', 'radio'], measured: { value: 11, unit: 'V' } },
  ]);
  const [found] = supplyFindings(rebootsWhileCranking, withSupply());
  expect(found?.limit?.value).toBeCloseTo(9.6, 9);
  expect(found?.says).toContain('may fall to 9.6 V; Old radio and Helm display need more');
});

test('units that live on less pass', () => {
  const tough = withSupply((_, __, boat) => {
    for (const sheet of boat.sheets) for (const power of sheet.power ?? []) power.minV = 9.6;
  });
  expect(supplyFindings(rebootsWhileCranking, tough)).toEqual([]);
});

test.each([
  ['nothing', 1],
  ['relay', 0],
  ['apart', 0],
] as const)('a house bank parted from the starting bank by %s', (partedBy, count) => {
  const boat = withSupply((bank, _, own) => {
    bank.for = 'house';
    own.supply.banks.push(startBank(partedBy));
  });
  expect(supplyFindings(rebootsWhileCranking, boat)).toHaveLength(count);
});
