import { expect, test } from 'vitest';
import type { LayoutLimit } from '../facts/layout-limits.ts';
import { aDevice, aGrade, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import { allClashes } from './clashing-limits.ts';
import { limitShortfall } from './limit-shortfall.ts';
import type { Problem } from './problem.ts';

const budget = { work: 5000 };

const shortfallOf = (problem: Problem, limit: LayoutLimit) =>
  limitShortfall({ problem, limit, clashes: allClashes(problem, budget), budget });

/** Tees 1 m from either end of a trunk of 93 m, and a drop of 5 m from each to a place no trunk reaches. */
const longTrunk = aProblem({
  places: [
    aPlace('bow'),
    aPlace('fore', { end: false }),
    aPlace('aft', { end: false }),
    aPlace('stern'),
    aPlace('mast', { tees: false }),
    aPlace('rail', { tees: false }),
  ],
  ways: [
    aWay({ id: 'w1', a: 'bow', b: 'fore', mm: 1000, drop: false }),
    aWay({ id: 'w2', a: 'fore', b: 'aft', mm: 91_000, drop: false }),
    aWay({ id: 'w3', a: 'aft', b: 'stern', mm: 1000, drop: false }),
    aWay({ id: 'w4', a: 'fore', b: 'mast', mm: 5000, trunk: 0 }),
    aWay({ id: 'w5', a: 'aft', b: 'rail', mm: 5000, trunk: 0 }),
  ],
  devices: [aDevice('wind.n2k', 'mast', { tailMm: 0 }), aDevice('gnss.n2k', 'rail', { tailMm: 0 })],
});

test('BB-01: 93 m of trunk with 5 m drops 1 m from each end would be 101 m where 100 m is allowed (Real Time Automation, DeviceNet cabling note)', () => {
  expect(allClashes(longTrunk, budget)).toEqual([['length']]);
  expect(shortfallOf(longTrunk, 'length')).toEqual({
    limit: 'length',
    grade: 'light',
    at: [],
    figure: { would: 101, allowed: 100, unit: 'm' },
  });
});

test('BB-30: 11 A that one place draws would all pass one leg of cable for 8 A (Epson, fieldbus I/O manual rev 6, p 15)', () => {
  const heavy = aGrade({ id: 'heavy', maxMa: 8000, microOhmPerM: 1 });
  const problem = aProblem({
    places: [aPlace('helm')],
    ways: [],
    devices: [aDevice('a.n2k', 'helm', { len: 100 }), aDevice('b.n2k', 'helm', { len: 120 })],
    grades: [heavy],
  });
  expect(shortfallOf(problem, 'current')?.figure).toEqual({ would: 11, allowed: 8, unit: 'A' });
});

test('BB-06: 51 units are one more than the 50 allowed', () => {
  const devices = Array.from({ length: 51 }, (_, n) => aDevice(`unit-${n}.n2k`, 'bow', { len: 0 }));
  const problem = { ...longTrunk, devices };
  expect(shortfallOf(problem, 'device-count')?.figure).toEqual({ would: 51, allowed: 50, unit: 'units' });
});

test('of a drop that is too long the least is told, not what the cheapest trunk would make of it', () => {
  // Dropping all the way from the helm is cheapest, for a way with trunk costs work; the tee at the locker is nearer.
  const problem = aProblem({
    places: [aPlace('helm'), aPlace('locker'), aPlace('mast', { tees: false })],
    ways: [
      aWay({ id: 'w1', a: 'helm', b: 'locker', mm: 4000, extra: 50_000 }),
      aWay({ id: 'w2', a: 'locker', b: 'mast', mm: 7000, trunk: 0 }),
    ],
    devices: [aDevice('display.n2k', 'helm'), aDevice('wind.n2k', 'mast')],
  });
  const short = shortfallOf(problem, 'one-drop');
  expect(short?.figure).toEqual({ would: 7.3, allowed: 6, unit: 'm' });
  expect(short?.at).toEqual(['wind.n2k']);
});

test('a bank that falls below what a unit needs is told with no volts to lose', () => {
  const problem = {
    ...longTrunk,
    grades: [aGrade({ failMm: 200_000, warnMm: 200_000 })],
    feed: { ...longTrunk.feed, mv: 8800 },
  };
  expect(allClashes(problem, budget)).toEqual([['volts']]);
  const figure = shortfallOf(problem, 'volts')?.figure;
  expect(figure?.allowed).toBe(-0.2);
});

test('no more places are named for tees than are needed', () => {
  const problem = aProblem({
    places: ['a', 'b', 'c', 'd'].map((id) => aPlace(id, { tees: id === 'a' })),
    ways: [
      aWay({ id: 'w1', a: 'a', b: 'b', mm: 2000 }),
      aWay({ id: 'w2', a: 'b', b: 'c', mm: 2000 }),
      aWay({ id: 'w3', a: 'c', b: 'd', mm: 4000 }),
    ],
    devices: [aDevice('one.n2k', 'b'), aDevice('two.n2k', 'c'), aDevice('three.n2k', 'd')],
  });
  expect(allClashes(problem, budget)).toEqual([['one-drop', 'tee-places']]);
  expect(shortfallOf(problem, 'tee-places')?.at).toHaveLength(1);
});
