import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Cable } from '../../boat/boat-schema.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { terminatorsTooManyOrFew } from './terminators-too-many-or-few.ts';

const trunk = (id: string, from: string, to: string, terminator?: boolean): Cable => ({
  id,
  kind: 'trunk',
  from: { place: from },
  to: { place: to },
  serves: 'nav',
  ways: [],
  length: { valueM: 3, how: 'taped' },
  diameterMm: 6.5,
  condition: 'good',
  fate: 'stays',
  ...(terminator === undefined ? {} : { terminator }),
});

/** The small boat, its trunk from the helm by the locker to the mast, with these cables kept. */
const found = (cables: Cable[], { fitted = false, boat = aBoat() } = {}) =>
  findingsOf(terminatorsTooManyOrFew, {
    boat: boat.with({ cables }).change((draft) => {
      if (fitted)
        draft.pins = { layouts: { nav: { grade: 'light', walk: [{ place: 'helm', tees: [] }], state: 'fitted' } } };
    }).boat,
  });

const endedGnss = aBoat().sheet('gnss-receiver', (sheet) => {
  sheet.terminator = true;
});

test('a kept trunk with a terminator at each end passes, and so does one whose ends are still to be bought', () => {
  const whole = [trunk('fore', 'locker', 'mast-base', true), trunk('aft', 'helm', 'locker', true)];
  expect(found(whole)).toEqual([]);
  expect(found([trunk('fore', 'locker', 'mast-base')])).toEqual([]);
  expect(found([])).toEqual([]);
});

test('three terminators read 40 ohm (BB-38, 120 / n, esd CAN troubleshooting guide)', () => {
  expect(found([trunk('fore', 'locker', 'mast-base', true)], { boat: endedGnss })).toMatchObject([
    {
      level: 'fault',
      about: ['fore', 'gnss.n2k', 'nav'],
      measured: { value: 3 },
      limit: { value: 2 },
      says: expect.stringContaining('40 ohm'),
    },
  ]);
});

test('a unit with a terminator at the end of the trunk takes the place of one and passes (BB-07, one at each trunk end)', () => {
  expect(found([], { boat: endedGnss })).toEqual([]);
});

test('one in a stretch of trunk between the ends is a fault, and is counted', () => {
  const places = [
    ...aBoat().boat.places,
    { id: 'cabin', name: 'cabin', xM: 3, yM: 0, zM: 1, exposure: 'dry', reach: 'open', tees: true } as const,
  ];
  const boat = aBoat().with({ places });
  expect(found([trunk('middle', 'locker', 'cabin', true)], { boat })).toMatchObject([
    { about: ['middle', 'nav'], measured: { value: 3 } },
  ]);
});

test('a fitted trunk known to be bare at one end has one terminator and reads 120 ohm', () => {
  const cables = [trunk('fore', 'locker', 'mast-base', false)];
  expect(found(cables, { fitted: true })).toMatchObject([
    { about: ['mast-base', 'nav'], measured: { value: 1 }, says: expect.stringContaining('120 ohm') },
  ]);
  expect(found(cables)).toEqual([]);
});

test('a fitted trunk bare at both ends reads nothing', () => {
  const cables = [trunk('whole', 'helm', 'mast-base', false)];
  expect(found(cables, { fitted: true })).toMatchObject([
    { about: ['helm', 'mast-base', 'nav'], measured: { value: 0 }, says: expect.stringContaining('nothing is read') },
  ]);
});
