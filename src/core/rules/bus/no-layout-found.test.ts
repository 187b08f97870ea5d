import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { noLayoutFound } from './no-layout-found.ts';

const navJoin = {
  id: 'nav-join',
  kind: 'nmea2000',
  bus: 'nav',
  members: [{ kit: 'display', port: 'n2k', as: 'both' }],
  from: 'file',
  lines: [],
} as const;
const joins = [{ ...navJoin, members: [...navJoin.members], lines: [] }];

test('a bus that has a layout is not spoken of', () => {
  expect(findingsOf(noLayoutFound, { plan: { joins } })).toEqual([]);
});

test('a joined bus without a layout is a fault', () => {
  expect(findingsOf(noLayoutFound, { plan: { joins, buses: [] } })).toMatchObject([{ level: 'fault', about: ['nav'] }]);
});

test('a bus nothing is joined to needs no layout', () => {
  expect(findingsOf(noLayoutFound, { plan: { joins: [], buses: [] } })).toEqual([]);
});
