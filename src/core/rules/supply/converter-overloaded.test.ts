import { expect, test } from 'vitest';
import { converterOverloaded } from './converter-overloaded.ts';
import { converter, subPanel, supplyFindings, withSupply } from './supply-case.test-helper.ts';

/** A radio of 6 A behind a converter, with a peak beyond where given. */
const rated = (ratedA: number, peak?: number) =>
  withSupply((_, panel, boat) => {
    for (const sheet of boat.sheets) {
      if (sheet.id !== 'fixed-radio') continue;
      for (const power of sheet.power ?? []) if (peak !== undefined) power.peak = peak;
    }
    boat.supply.dcdc.push({ ...converter('conv'), ratedA });
    panel.circuits = [{ id: 'to-conv', ratingA: 20, kind: 'fuse', feeds: ['conv'] }];
    boat.supply.panels.push(subPanel('low', 'conv', ['radio.dc']));
  });

test('one that gives what hangs on it passes', () => {
  expect(supplyFindings(converterOverloaded, rated(6))).toEqual([]);
});

test('one that gives less is a fault, and less than a peak a doubt', () => {
  expect(supplyFindings(converterOverloaded, rated(5.9))).toMatchObject([
    { level: 'fault', about: ['conv', 'low'], measured: { value: 6, unit: 'A' }, limit: { value: 5.9, unit: 'A' } },
  ]);
  expect(supplyFindings(converterOverloaded, rated(6, 9))).toMatchObject([{ level: 'doubt', measured: { value: 9 } }]);
  expect(supplyFindings(converterOverloaded, rated(9, 9))).toEqual([]);
});
