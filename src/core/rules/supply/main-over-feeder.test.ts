import { expect, test } from 'vitest';
import { mainOverFeeder } from './main-over-feeder.ts';
import { exactly, subPanel, supplyFindings, withSupply } from './supply-case.test-helper.ts';

/** 16 mm² of 90 °C carries 100 A by the metric table. */
const guardedBy = (ratingA: number) =>
  withSupply((bank) => {
    bank.main = { kind: 'fuse', ratingA, distance: exactly(0.1) };
  });

test.each([
  [100, []],
  [101, ['doubt']],
  [150, ['doubt']],
  [151, ['fault']],
] as const)('a main of %i A before a feeder that carries 100 A', (ratingA, levels) => {
  expect(supplyFindings(mainOverFeeder, guardedBy(ratingA)).map(({ level }) => level)).toEqual(levels);
});

test('a feeder of which nobody knows how thick it is, is not judged', () => {
  const unknown = withSupply((bank, panel) => {
    bank.main = { kind: 'fuse', ratingA: 400 };
    if (panel.feeder !== undefined) delete panel.feeder.areaMm2;
  });
  expect(supplyFindings(mainOverFeeder, unknown)).toEqual([]);
});

test('behind a panel it is the circuit before it that counts', () => {
  const thin = withSupply((_, panel, boat) => {
    panel.circuits.push({ id: 'aft', ratingA: 30, kind: 'breaker', feeds: ['aft-panel'] });
    boat.supply.panels.push({
      ...subPanel('aft-panel', 'main-panel', []),
      feeder: { length: exactly(4), areaMm2: 1 },
    });
  });
  expect(supplyFindings(mainOverFeeder, thin)).toMatchObject([
    { level: 'fault', about: ['aft-panel', 'main-panel'], measured: { value: 30, unit: 'A' } },
  ]);
});
