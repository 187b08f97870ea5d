import { describe, expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { voltsTooLow } from './volts-too-low.ts';

const volts = (lowestV: number, dropV: number) => [{ port: 'display.n2k', lowestV, dropV }];
const levels = (lowestV: number, dropV: number, supplyV = 11.8) =>
  findingsOf(voltsTooLow, { bus: { supplyV, volts: volts(lowestV, dropV) } }).map(({ level, limit }) => [
    level,
    limit?.value,
  ]);

describe('volts on a bus fed from a battery', () => {
  test('may lose 1.5 V', () => {
    expect(levels(10.3, 1.5)).toEqual([]);
  });

  test('are a doubt above 1.5 V and a fault above 1.67 V', () => {
    expect(levels(10.2, 1.6)).toEqual([['doubt', 1.5]]);
    expect(levels(9.9, 1.9)).toEqual([['fault', 1.67]]);
  });

  test('of 8.939 V at the device fail below 9.0 V (BB-17, a 12 W device at the end of 20 m)', () => {
    expect(levels(8.939, 1.0)).toEqual([['fault', 9]]);
  });
});

test('a regulated supply of 13.8 V may lose 3.0 V and no more', () => {
  expect(levels(10.8, 3, 13.8)).toEqual([]);
  expect(levels(10.7, 3.1, 13.8)).toEqual([['fault', 3]]);
});

test('the worst device speaks for all that lose too much', () => {
  const both = [...volts(9.8, 1.8), { port: 'gnss.n2k', lowestV: 9.7, dropV: 1.9 }];
  expect(findingsOf(voltsTooLow, { bus: { volts: both } })).toMatchObject([{ about: ['gnss.n2k', 'nav'] }]);
});
