import { expect, test } from 'vitest';
import { circuitsShort } from './circuits-short.ts';
import { supplyFindings, withSupply } from './supply-case.test-helper.ts';

const withUnfed = (freeWays?: number) =>
  withSupply((_, panel) => {
    panel.circuits.splice(1);
    if (freeWays !== undefined) panel.freeWays = freeWays;
  });

test('everything on a circuit, or a place for each, passes', () => {
  expect(supplyFindings(circuitsShort, withSupply())).toEqual([]);
  expect(supplyFindings(circuitsShort, withUnfed(2))).toEqual([]);
});

test('what is short is a fault with the fuse block it takes', () => {
  const [found, ...more] = supplyFindings(circuitsShort, withUnfed(1));
  expect(more).toEqual([]);
  expect(found).toMatchObject({
    level: 'fault',
    about: ['display', 'main-panel', 'radio'],
    measured: { value: 2, unit: 'circuits' },
    limit: { value: 1, unit: 'circuits' },
  });
  // 1.25 x (1.8 + 6 A) = 9.75 A
  expect(found?.cure).toBe('Fit a fuse block of 2 circuits behind one circuit of 10 A or more, with wire to match.');
});

test('where nobody has counted the free places it is a doubt', () => {
  expect(supplyFindings(circuitsShort, withUnfed())).toMatchObject([{ level: 'doubt' }]);
});

test('a unit that no panel has the volts for is a fault', () => {
  const high = withSupply((bank, panel) => {
    bank.nominalV = 24;
    panel.circuits.splice(1);
    panel.freeWays = 9;
  });
  expect(supplyFindings(circuitsShort, high)).toMatchObject([{ level: 'fault', about: ['display', 'radio'] }]);
});
