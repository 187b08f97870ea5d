import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { bridgeWithoutDatum } from './bridge-without-datum.ts';
import { ternWithAis } from './typed-case.test-helper.ts';

const bridge = { id: 'road', on: '2027-06-01', name: 'road bridge', chartedM: 17 };

test('a bridge of which nobody said what its chart counts from is a fault, and nothing is computed (AD-06)', () => {
  expect(findingsOf(bridgeWithoutDatum, { boat: ternWithAis({ sea: { bridges: [bridge] } }) })).toMatchObject([
    { id: 'settings/bridge-without-datum:road', level: 'fault', measured: { value: 17, unit: 'm' } },
  ]);
});

test('with its level it is none', () => {
  const boat = ternWithAis({ sea: { bridges: [{ ...bridge, datum: 'mhw', datumAboveM: 4.2 }] } });
  expect(findingsOf(bridgeWithoutDatum, { boat })).toEqual([]);
});
