import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { littleInHand } from './little-in-hand.ts';
import { aFeed, aLoad } from './power-case.test-helper.ts';

const found = (loadA: number, fuseA?: number) =>
  findingsOf(littleInHand, {
    plan: { feeds: [aFeed({ loadA })], loads: [aLoad(fuseA === undefined ? {} : { fuseA })] },
  });

test('a fuse is at least 1.25 x the steady current at the lowest supply (common practice)', () => {
  expect(found(4)).toEqual([]);
  expect(found(4.1)).toMatchObject([{ level: 'advice', about: ['helm-circuit'], limit: { value: 1.25 } }]);
});

test('the rating a maker states for his own unit is enough', () => {
  expect(found(4.6, 5)).toEqual([]);
});

test('a circuit that is too small altogether is told of elsewhere', () => {
  expect(found(5.1)).toEqual([]);
});

test('the fuse of a bus follows what its cable bears, and is not grown', () => {
  expect(findingsOf(littleInHand, { plan: { feeds: [aFeed({ to: 'nav', loadA: 4.6 })] } })).toEqual([]);
});
