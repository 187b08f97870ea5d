import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { tankNumberTooHigh } from './tank-number-too-high.ts';

const numbered = (instance: number, reading: 'fuel-level' | 'engine' = 'fuel-level') =>
  findingsOf(tankNumberTooHigh, {
    boat: aBoat().unit('gnss', { instances: [{ port: 'n2k', reading, instance }] }).boat,
  });

test('tank 5 passes and tank 6 is advice', () => {
  expect(numbered(5)).toEqual([]);
  expect(numbered(6)).toMatchObject([
    { level: 'advice', about: ['gnss'], measured: { value: 6 }, limit: { value: 5 } },
  ]);
});

test('other readings may have any number', () => {
  expect(numbered(6, 'engine')).toEqual([]);
});
