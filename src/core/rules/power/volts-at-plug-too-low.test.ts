import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { aFeed, aLoad } from './power-case.test-helper.ts';
import { voltsAtPlugTooLow } from './volts-at-plug-too-low.ts';

const found = (at: number, over: Parameters<typeof aLoad>[0] = {}, busV = 11) =>
  findingsOf(voltsAtPlugTooLow, {
    plan: {
      loads: [aLoad(over)],
      supplies: [{ source: 'house', sourceV: 11.8, works: true, at: [{ node: over.port ?? 'display.dc', volts: at }] }],
    },
    bus: { volts: [{ port: 'display.n2k', lowestV: busV, dropV: 0.5 }] },
  });

test('the volts of its own sheet are the least a unit may get', () => {
  expect(found(10)).toEqual([]);
  expect(found(9.9)).toMatchObject([
    { level: 'fault', about: ['display.dc', 'house'], measured: { value: 9.9 }, limit: { value: 10, unit: 'V' } },
  ]);
});

test('a unit on a bus that is too low already is told of once, by the rule of the bus', () => {
  const onBus = { port: 'display.n2k', source: { by: 'bus', bus: 'nav' }, minV: 9 } as const;
  expect(found(8.9, onBus, 8.9)).toEqual([]);
  expect(found(8.9, onBus, 9.1)).toHaveLength(1);
});

test('a unit whose own wire is said to lose too much is told of there', () => {
  const at = [{ node: 'display.dc', volts: 9.5 }];
  const supplies = [{ source: 'house', sourceV: 11.8, works: true, at }];
  const feeds = [aFeed({ dropV: 1.5 })];
  expect(findingsOf(voltsAtPlugTooLow, { plan: { loads: [aLoad()], supplies, feeds } })).toEqual([]);
});

test('a unit the solve does not reach is not guessed at', () => {
  expect(findingsOf(voltsAtPlugTooLow, { plan: { loads: [aLoad()] } })).toEqual([]);
});
