import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { fixedLeadTooShort } from './fixed-lead-too-short.ts';

const line = (lengthM: number, longestM: number): LineEntry => ({
  id: 'analog:gnss.bus~display.bus',
  kind: 'analog',
  from: 'gnss.bus',
  to: 'radio.wires',
  places: [],
  ways: [],
  lengthM,
  longestM,
  guessed: false,
});
const found = (lengthM: number, longestM: number, mayExtend?: boolean) => {
  const boat = aBoat().sheet('gnss-receiver', (sheet) => {
    for (const plug of sheet.plugs) {
      plug.fixedLead = { valueM: 6, how: 'papers', lessM: 0, moreM: 0 };
      if (mayExtend !== undefined) plug.mayExtend = mayExtend;
    }
  }).boat;
  return findingsOf(fixedLeadTooShort, { boat, plan: { lines: [line(lengthM, longestM)] } });
};

test('a lead that covers the way at its longest passes', () => {
  expect(found(5, 6, false)).toEqual([]);
});

test('one that may not reach, with every doubt against it, is a doubt', () => {
  expect(found(5.5, 6.2, false)).toMatchObject([{ level: 'doubt', about: ['gnss'], limit: { value: 6 } }]);
  expect(found(6.5, 7)).toMatchObject([{ level: 'doubt' }]);
});

test('one that cannot reach and may not be extended is a fault; one that may be extended passes', () => {
  expect(found(6.5, 7, false)).toMatchObject([{ level: 'fault' }]);
  expect(found(6.5, 7, true)).toEqual([]);
});
