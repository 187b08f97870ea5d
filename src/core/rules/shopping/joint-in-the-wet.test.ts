import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { jointInTheWet } from './joint-in-the-wet.ts';

const line = (piecesM: number[]): LineEntry => ({
  id: 'ethernet:display.net~gnss.net',
  kind: 'ethernet',
  from: 'display.net',
  to: 'gnss.net',
  places: ['locker', 'helm'],
  ways: ['locker-helm'],
  lengthM: 2,
  longestM: 2.4,
  guessed: false,
  pieces: piecesM.map((lengthM) => ({ lengthM, made: false })),
});
const found = (exposure: 'dry' | 'bilge', piecesM: number[]) => {
  const { boat } = aBoat().change((draft) => {
    for (const way of draft.ways) if (way.id === 'locker-helm') way.exposure = exposure;
  });
  return findingsOf(jointInTheWet, { boat, plan: { lines: [line(piecesM)] } });
};

test('two pieces joined in a dry way pass, and one piece in the bilge has no joint', () => {
  expect(found('dry', [1.2, 1.2])).toEqual([]);
  expect(found('bilge', [2.4])).toEqual([]);
});

test('two pieces joined in the bilge are a fault about that way', () => {
  expect(found('bilge', [1.2, 1.2])).toMatchObject([{ level: 'fault', about: ['display', 'gnss', 'locker-helm'] }]);
});
