import { expect, test } from 'vitest';
import { aDevice, aGrade, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import { checkLayout } from './check-layout.ts';
import type { Layout, Problem } from './problem.ts';
import { solveLayout } from './solve-layout.ts';

/**
 * One device of 1 A at the far end of a long way that takes no drop, the only feed at the near end: the loss is
 * 2 x 0.057 ohm/m x (12.5 + 0.3) m x 1 A = 1.459 V, and 0.028 V in the feed lead.
 */
const problem = (lostMv: { warn: number; fail: number }): Problem => {
  const bare = aProblem({
    places: [aPlace('bow'), aPlace('panel')],
    ways: [aWay({ id: 'keel', a: 'bow', b: 'panel', mm: 12_500, drop: false })],
    devices: [aDevice('lamp.n2k', 'bow', { len: 20 })],
    grades: [aGrade(), aGrade({ id: 'mid', microOhmPerM: 14_200, trunkPerM: 900, dropPerM: 900 })],
  });
  const reach = bare.feed.reach.filter(({ place }) => place === 'panel');
  return { ...bare, feed: { ...bare.feed, lostMv, reach } };
};

const lastOf = (posed: Problem): Layout | undefined => [...solveLayout(posed, { work: 500 })].at(-1);

test('light cable is chosen while it loses no more volts than the warn limit', () => {
  expect(lastOf(problem({ warn: 1500, fail: 1670 }))).toMatchObject({ grade: 'light' });
});

test('heavier cable is chosen where light cable would lose more than the warn limit', () => {
  expect(lastOf(problem({ warn: 1400, fail: 1670 }))).toMatchObject({ grade: 'mid' });
});

test('the fail limit is used only where nothing keeps the warn limit', () => {
  const posed = problem({ warn: 100, fail: 1670 });
  const layout = lastOf(posed);
  expect(layout?.status).toBe('proven');
  expect(layout && checkLayout(posed, layout).broken).toEqual([]);
});

test('over the fail limit the checker says how much is lost, where, and the limit', () => {
  const layout = lastOf(problem({ warn: 1500, fail: 1670 }));
  const strict = problem({ warn: 1400, fail: 1400 });
  expect(layout && checkLayout(strict, layout).broken).toEqual([
    '1.488 V are lost on the way to lamp.n2k; the limit is 1.4 V.',
  ]);
});
