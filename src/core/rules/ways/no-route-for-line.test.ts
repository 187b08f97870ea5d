import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { noRouteForLine } from './no-route-for-line.ts';

const gap = { kind: 'pair', from: 'converter.wires', to: 'radio.wires', serves: ['radio-position'] } as const;
const gaps = [{ ...gap, serves: [...gap.serves] }];

test('a plan in which every line has its route passes', () => {
  expect(findingsOf(noRouteForLine)).toEqual([]);
});

test('a wanted cable without a route is a fault about the join it serves', () => {
  expect(findingsOf(noRouteForLine, { plan: { gaps } })).toMatchObject([
    {
      id: 'ways/no-route-for-line:radio-position:pair:converter.wires:radio.wires',
      level: 'fault',
      about: ['radio-position'],
    },
  ]);
});

test('a cable to a place that no way leads to is left to the rule on such places', () => {
  const boat = aBoat().with({ ways: [] }).boat;
  expect(findingsOf(noRouteForLine, { boat, plan: { gaps } })).toEqual([]);
});
