import { expect, test } from 'vitest';
import { sharedCircuitWithoutOwnFuses } from './shared-circuit-without-own-fuses.ts';
import { supplyFindings, withSupply } from './supply-case.test-helper.ts';

test('two units on one circuit are a doubt', () => {
  expect(supplyFindings(sharedCircuitWithoutOwnFuses, withSupply())).toMatchObject([
    { level: 'doubt', about: ['display', 'helm-circuit', 'main-panel', 'radio'], measured: { value: 2 } },
  ]);
});

test('with a fuse of its own for each it passes', () => {
  const fused = withSupply((_, panel) => {
    for (const circuit of panel.circuits) circuit.fusedEach = true;
  });
  expect(supplyFindings(sharedCircuitWithoutOwnFuses, fused)).toEqual([]);
});

test('an old unit and the one that takes its place do not share', () => {
  const replaced = withSupply((_, __, boat) => {
    for (const unit of boat.kit) if (unit.id === 'radio') unit.fate = 'goes';
  });
  expect(supplyFindings(sharedCircuitWithoutOwnFuses, replaced)).toEqual([]);
});

test('a bus on the circuit of a unit shares it, and two ports of one unit do not', () => {
  const feeding = (feeds: string[]) =>
    withSupply((_, panel) => {
      panel.circuits = [{ id: 'c0', ratingA: 10, kind: 'fuse', feeds }];
    });
  expect(supplyFindings(sharedCircuitWithoutOwnFuses, feeding(['nav', 'display.dc']))).toHaveLength(1);
  expect(supplyFindings(sharedCircuitWithoutOwnFuses, feeding(['display.n2k', 'display.dc']))).toEqual([]);
});
