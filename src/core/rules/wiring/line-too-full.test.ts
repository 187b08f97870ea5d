import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { lineTooFull } from './line-too-full.ts';

/** The small boat whose converter sends heading at the given interval, ms. HDG has 25 characters in recordings. */
const found = (everyMs: number, baud = 4800) => {
  const boat = aBoat().sheet('converter-0183', (sheet) => {
    for (const port of sheet.ports.filter(({ id }) => id === 'out')) {
      port.baud = baud;
      port.sends = [{ sentence: 'HDG', everyMs }];
    }
  }).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(lineTooFull, { boat, plan: { joins } });
};

test('heading ten times a second, half the line, passes', () => {
  expect(found(100)).toEqual([]);
});

test('above 80 % it is a doubt, above the whole line a fault', () => {
  expect(found(60)).toMatchObject([{ level: 'doubt', about: ['converter.out'], limit: { value: 80, unit: '%' } }]);
  expect(found(50)).toMatchObject([{ level: 'fault' }]);
});

test('the same on a fast line passes', () => {
  expect(found(50, 38_400)).toEqual([]);
});
