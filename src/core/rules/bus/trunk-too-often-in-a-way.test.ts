import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Way } from '../../boat/boat-schema.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { trunkTooOftenInAWay } from './trunk-too-often-in-a-way.ts';

const walk = [
  { place: 'locker', tees: ['feed'] },
  { place: 'mast-base', via: 'locker-mast', tees: ['gnss.n2k'] },
  { place: 'locker', via: 'locker-mast', tees: [] },
];
const found = (kind: Way['kind'], trunkTimes?: 1 | 2) => {
  const boat = aBoat().change((draft) => {
    for (const way of draft.ways.filter(({ id }) => id === 'locker-mast')) {
      way.kind = kind;
      if (trunkTimes !== undefined) way.trunkTimes = trunkTimes;
    }
  }).boat;
  return findingsOf(trunkTooOftenInAWay, { boat, bus: { walk } });
};

test('out and back through a tray or an open way passes', () => {
  expect(found('tray')).toEqual([]);
  expect(found('open')).toEqual([]);
});

test('out and back through a mast or a gland is a fault about the way', () => {
  for (const kind of ['mast', 'gland'] as const) {
    expect(found(kind)).toMatchObject([{ level: 'fault', about: ['locker-mast', 'nav'], measured: { value: 2 } }]);
  }
});

test('a mast that the owner says takes two passes', () => {
  expect(found('mast', 2)).toEqual([]);
});
