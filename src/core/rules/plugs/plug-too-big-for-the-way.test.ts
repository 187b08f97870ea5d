import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { plugTooBigForTheWay } from './plug-too-big-for-the-way.ts';

const drop: LineEntry = {
  id: 'drop:gnss.bus~nav',
  kind: 'drop',
  from: 'gnss.bus',
  to: 'nav',
  places: ['stern-rail', 'locker'],
  ways: ['locker-stern'],
  lengthM: 4.8,
  longestM: 5,
  guessed: false,
};
const found = (boreMm: number, line: Partial<LineEntry> = {}) => {
  const boat = aBoat().change((draft) => {
    for (const way of draft.ways) if (way.id === 'locker-stern') way.bore = { mm: boreMm, how: 'taped' };
  }).boat;
  return findingsOf(plugTooBigForTheWay, { boat, plan: { lines: [{ ...drop, ...line }] } });
};

test('a moulded plug of 16 mm passes a 16 mm hole', () => {
  expect(found(16)).toEqual([]);
});

test('through a 12 mm gland it is a doubt about that way', () => {
  expect(found(12)).toMatchObject([
    { level: 'doubt', about: ['locker-stern'], measured: { value: 12 }, limit: { value: 16, unit: 'mm' } },
  ]);
});

test('cable that lies there already, and lines of other kinds, are not spoken of', () => {
  expect(found(12, { kept: ['old'] })).toEqual([]);
  expect(found(12, { kind: 'coax', to: 'radio.antenna' })).toEqual([]);
});
