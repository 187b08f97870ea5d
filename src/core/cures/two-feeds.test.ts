import { expect, test } from 'vitest';
import { aDevice, aGrade, aPlace, aProblem, aWay } from '../backbone/a-problem.test-helper.ts';
import { solveLayout } from '../backbone/solve-layout.ts';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import { twoFeeds } from './two-feeds.ts';

const index = indexBoat(aBoat().boat);
const budget = { work: 5000 };

/** Two loads of 2.5 A each, 30 m apart, on cable that carries 3 A a leg and loses 57 milliohm a metre. */
const farApart = aProblem({
  places: [aPlace('bow'), aPlace('helm'), aPlace('stern')],
  ways: [
    aWay({ id: 'fore', a: 'bow', b: 'helm', mm: 15_000 }),
    aWay({ id: 'rear', a: 'helm', b: 'stern', mm: 15_000 }),
  ],
  devices: [
    aDevice('winch.n2k', 'bow', { len: 50, minMv: 10_500 }),
    aDevice('pump.n2k', 'stern', { len: 50, minMv: 10_500 }),
  ],
});

test('fed in the middle both ends lose 4.3 V and no feed helps; fed at both ends each part loses next to nothing', () => {
  expect([...solveLayout(farApart, budget)].at(-1)?.status).toBe('infeasible');
  const cure = twoFeeds({ index, problem: farApart, budget });
  expect(cure?.says).toContain('parted between');
  expect(cure?.edits).toEqual([]);
  // One layout with its feed, and a second feed with its tee; each lead is a metre.
  expect(cure?.cost).toBe(30 * 400 + 0.6 * 500 + 3 * 2000 + 2 * 1500 + 3000 + 200 + 3000 + 2000 + 200 + 200);
});

test('where one unit alone draws more than the cable carries, two feeds do not help', () => {
  const devices = [aDevice('winch.n2k', 'bow', { len: 70 })];
  expect(twoFeeds({ index, problem: { ...farApart, devices, grades: [aGrade()] }, budget })).toBeUndefined();
});
