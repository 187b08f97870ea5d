import { expect, test } from 'vitest';
import { fedByNothing } from './fed-by-nothing.ts';
import { converter, subPanel, supplyFindings, withSupply } from './supply-case.test-helper.ts';

const withConverter = (feeds: string[], from = 'conv') =>
  withSupply((_, panel, boat) => {
    boat.supply.dcdc.push(converter('conv'));
    panel.circuits.push({ id: 'to-conv', ratingA: 10, kind: 'fuse', feeds });
    boat.supply.panels.push(subPanel('low', from, []));
  });

test('a converter with an input passes, and one that nothing hangs on', () => {
  expect(supplyFindings(fedByNothing, withConverter(['conv']))).toEqual([]);
  expect(supplyFindings(fedByNothing, withConverter([], 'main-panel'))).toEqual([]);
});

test('one without an input is a fault about it and what hangs on it', () => {
  expect(supplyFindings(fedByNothing, withConverter([]))).toMatchObject([{ level: 'fault', about: ['conv', 'low'] }]);
});

test('one that feeds itself in a ring is told apart', () => {
  const ring = withSupply((_, panel, boat) => {
    boat.supply.dcdc.push(converter('conv'));
    panel.from = 'conv';
    panel.circuits.push({ id: 'round', ratingA: 10, kind: 'fuse', feeds: ['conv'] });
  });
  expect(supplyFindings(fedByNothing, ring)).toMatchObject([{ about: ['conv', 'main-panel'] }]);
  expect(supplyFindings(fedByNothing, ring)[0]?.says).toContain('feeds itself in a ring');
});
