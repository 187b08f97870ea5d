import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Way } from '../boat/boat-schema.ts';
import type { LineEntry } from '../plan-shape.ts';
import { lineJoints } from './line-joints.ts';

const way = (id: string, valueM: number, exposure: Way['exposure'] = 'dry'): Way => ({
  id,
  ends: ['locker', 'helm'],
  length: { valueM, how: 'taped', lessM: 0, moreM: 0 },
  kind: 'open',
  known: 'seen',
  exposure,
});
const tern = aBoat().boat;
const index = indexBoat(
  aBoat().with({ ways: [...tern.ways, way('dry-2', 2.5), way('bilge-7', 7, 'bilge'), way('dry-3', 3)] }).boat,
);
const line = (ways: string[], piecesM: number[], longestM: number): LineEntry => ({
  id: 'ethernet:a.net~b.net',
  kind: 'ethernet',
  from: 'a.net',
  to: 'b.net',
  places: [],
  ways,
  lengthM: longestM,
  longestM,
  guessed: false,
  pieces: piecesM.map((lengthM) => ({ lengthM, made: false })),
});

test('a line of one piece has no joint', () => {
  expect(lineJoints(index, line(['bilge-7'], [10], 7.6))).toEqual([]);
});

test('of 9 m and 2.4 m the short one is laid first, so that the joint falls before the bilge', () => {
  expect(lineJoints(index, line(['dry-2', 'bilge-7'], [9, 2.4], 9.5))).toEqual([{ way: 'dry-2', isWet: false }]);
});

test('two of 5 m are joined in the bilge whichever comes first', () => {
  expect(lineJoints(index, line(['dry-2', 'bilge-7'], [5, 5], 9.5))).toEqual([{ way: 'bilge-7', isWet: true }]);
});
