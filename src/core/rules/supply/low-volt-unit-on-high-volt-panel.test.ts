import { expect, test } from 'vitest';
import { lowVoltUnitOnHighVoltPanel } from './low-volt-unit-on-high-volt-panel.ts';
import { converter, subPanel, supplyFindings, withSupply } from './supply-case.test-helper.ts';

const at = (nominalV: number) =>
  withSupply((bank) => {
    bank.nominalV = nominalV;
  });

test('units of 12 V on 12 V pass, and up to the volts they stand', () => {
  expect(supplyFindings(lowVoltUnitOnHighVoltPanel, at(12))).toEqual([]);
  expect(supplyFindings(lowVoltUnitOnHighVoltPanel, at(16))).toEqual([]);
});

test('on 24 V each is a danger with what it stands', () => {
  expect(supplyFindings(lowVoltUnitOnHighVoltPanel, at(24))).toMatchObject([
    { level: 'danger', about: ['display', 'helm-circuit', 'main-panel'], limit: { value: 17, unit: 'V' } },
    { level: 'danger', about: ['helm-circuit', 'main-panel', 'radio'], measured: { value: 24 }, limit: { value: 16 } },
  ]);
});

test('behind a converter, or at a tap of 12 V, they have 12 V', () => {
  const converted = withSupply((bank, panel, boat) => {
    bank.nominalV = 24;
    boat.supply.dcdc.push(converter('conv'));
    boat.supply.panels.push({ ...subPanel('main', 'house', ['conv']) });
    panel.from = 'conv';
  });
  expect(supplyFindings(lowVoltUnitOnHighVoltPanel, converted)).toEqual([]);
  const tapped = withSupply((bank, panel) => {
    bank.nominalV = 24;
    panel.tapV = 12;
  });
  expect(supplyFindings(lowVoltUnitOnHighVoltPanel, tapped)).toEqual([]);
});
