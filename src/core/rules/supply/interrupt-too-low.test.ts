import { expect, test } from 'vitest';
import type { Bank } from '../../boat/supply.ts';
import { interruptTooLow } from './interrupt-too-low.ts';
import { supplyFindings, withSupply } from './supply-case.test-helper.ts';

const behind = (coldCrankingA: number, family: 'blade' | 'anl' | 'class-t', more: Partial<Bank> = {}) =>
  withSupply((bank) => Object.assign(bank, { coldCrankingA, main: { kind: 'fuse', family, ratingA: 50 }, ...more }));

test('PW-57 (ABYC E-11 table V-A, second-hand): behind 1800 CCA a main must break 5000 A', () => {
  expect(supplyFindings(interruptTooLow, behind(1800, 'blade'))).toMatchObject([
    { level: 'fault', about: ['house'], measured: { value: 1000 }, limit: { value: 5000, unit: 'A' } },
  ]);
  expect(supplyFindings(interruptTooLow, behind(1800, 'anl'))).toEqual([]);
});

test('a lithium bank wants 20 kA, which class T breaks', () => {
  const lithium = { chemistry: 'lifepo4' } as const;
  expect(supplyFindings(interruptTooLow, behind(600, 'anl', lithium))).toMatchObject([{ limit: { value: 20_000 } }]);
  expect(supplyFindings(interruptTooLow, behind(600, 'class-t', lithium))).toEqual([]);
});

test('a large bank that states no short-circuit current is a doubt unless its main breaks anything', () => {
  expect(supplyFindings(interruptTooLow, behind(2400, 'anl'))).toMatchObject([{ level: 'doubt', about: ['house'] }]);
  expect(supplyFindings(interruptTooLow, behind(2400, 'class-t'))).toEqual([]);
  expect(supplyFindings(interruptTooLow, behind(2400, 'anl', { shortCircuitA: 5500 }))).toEqual([]);
});

test('what is printed on the fuse counts before its kind, and what nobody knows is not judged', () => {
  const printed = withSupply((bank) => {
    Object.assign(bank, { coldCrankingA: 600, main: { kind: 'fuse', family: 'blade', interruptA: 2000 } });
  });
  expect(supplyFindings(interruptTooLow, printed)).toEqual([]);
  expect(supplyFindings(interruptTooLow, withSupply())).toEqual([]);
});

test('PW-58: behind 1100 CCA a circuit must break 1500 A', () => {
  const weak = withSupply((bank, panel) => {
    bank.coldCrankingA = 1100;
    for (const circuit of panel.circuits) circuit.interruptA = 1499;
    panel.circuits.splice(1);
  });
  expect(supplyFindings(interruptTooLow, weak)).toMatchObject([
    { about: ['bus-circuit', 'main-panel'], measured: { value: 1499 }, limit: { value: 1500 } },
  ]);
});
