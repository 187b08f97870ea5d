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

test('a draft with all its units at one place is a doubt, not a fault; a single unit there is nothing', () => {
  const heap = aBoat().change((boat) => {
    boat.ways = [];
    boat.places = boat.places.filter((place) => place.id === 'helm');
    for (const unit of boat.kit) unit.place = 'helm';
  });
  expect(findingsOf(placeJoinedToNothing, { boat: heap.boat })).toMatchObject([{ level: 'doubt', about: ['helm'] }]);
  const single = heap.change((boat) => {
    boat.kit = boat.kit.slice(0, 1);
  });
  expect(findingsOf(placeJoinedToNothing, { boat: single.boat })).toEqual([]);
});
