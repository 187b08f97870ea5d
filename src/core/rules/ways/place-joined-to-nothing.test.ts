import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { placeJoinedToNothing } from './place-joined-to-nothing.ts';

const withoutSternWay = aBoat().change((boat) => {
  boat.ways = boat.ways.filter((way) => way.id !== 'locker-stern');
});

test('a boat whose places are all joined passes', () => {
  expect(findingsOf(placeJoinedToNothing)).toEqual([]);
});

test('a unit at a place without a way is a fault at that place', () => {
  expect(findingsOf(placeJoinedToNothing, { boat: withoutSternWay.boat })).toMatchObject([
    { level: 'fault', about: ['stern-rail'] },
  ]);
});

test('an empty place, or one that only leaving kit stands at, is not spoken of', () => {
  const leaving = withoutSternWay.unit('gnss', { fate: 'goes' }).boat;
  expect(findingsOf(placeJoinedToNothing, { boat: leaving })).toEqual([]);
});
