import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { feederLosesTooMuch } from './feeder-loses-too-much.ts';
import { aFeed } from './power-case.test-helper.ts';

const found = (panelV: number, nominalV = 12) =>
  findingsOf(feederLosesTooMuch, {
    plan: {
      feeds: [aFeed({ nominalV })],
      supplies: [{ source: 'house', sourceV: 11.8, works: true, at: [{ node: 'main-panel', volts: panelV }] }],
    },
  });

test('a feeder may lose 3 % of the nominal voltage, as each branch may (ABYC E-11, second-hand)', () => {
  expect(found(11.44)).toEqual([]);
  expect(found(11.4)).toMatchObject([{ level: 'doubt', about: ['main-panel'], limit: { value: 3 } }]);
  expect(found(11.4)[0]?.measured?.value).toBeCloseTo(10 / 3, 9);
});

test('the same volts are half the share on 24 V', () => {
  expect(found(11.4, 24)).toEqual([]);
});

test('a panel that feeds nothing is not spoken of', () => {
  const supplies = [{ source: 'house', sourceV: 11.8, works: true, at: [{ node: 'main-panel', volts: 9 }] }];
  expect(findingsOf(feederLosesTooMuch, { plan: { supplies } })).toEqual([]);
});
