import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { endOutOfReach } from './end-out-of-reach.ts';

const withReach = (reach: 'open' | 'panel' | 'hard' | 'aloft') =>
  aBoat().change((boat) => {
    for (const place of boat.places) if (place.id === 'helm') place.reach = reach;
  }).boat;

test('an end behind a panel or aloft can be reached', () => {
  expect(findingsOf(endOutOfReach, { boat: withReach('panel') })).toEqual([]);
  expect(findingsOf(endOutOfReach, { boat: withReach('aloft') })).toEqual([]);
});

test('an end at a hard place is a fault at that place', () => {
  expect(findingsOf(endOutOfReach, { boat: withReach('hard') })).toMatchObject([
    { level: 'fault', about: ['helm', 'nav'] },
  ]);
});

test('both ends at one hard place are one finding', () => {
  expect(findingsOf(endOutOfReach, { boat: withReach('hard'), bus: { ends: ['helm', 'helm'] } })).toHaveLength(1);
});
