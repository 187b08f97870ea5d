import { expect, test } from 'vitest';
import { layoutLimits } from '../facts/layout-limits.ts';
import { aDevice, aGrade, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import { allClashes, clashingLimits, holdsSome, withoutLimits } from './clashing-limits.ts';
import { ladderBoat } from './ladder-boat.test-helper.ts';

const enough = { work: 5000 };

const bowToStern = aProblem({
  places: [aPlace('bow'), aPlace('helm'), aPlace('stern')],
  ways: [aWay({ id: 'fore', a: 'bow', b: 'helm', mm: 8000 }), aWay({ id: 'rear', a: 'helm', b: 'stern', mm: 9000 })],
  devices: [aDevice('compass.n2k', 'bow'), aDevice('display.n2k', 'helm'), aDevice('engine.n2k', 'stern')],
});

test('a trunk of 10 m cannot reach over 17 m, whatever else is given up', () => {
  const problem = { ...bowToStern, grades: [aGrade({ warnMm: 10_000, failMm: 10_000 })] };
  expect(clashingLimits(problem, enough)).toEqual(['length']);
});

test('a unit 8 m from the nearest place for tees: either a drop is longer than it may be, or a tee stands where none may', () => {
  const places = [aPlace('bow', { tees: false }), aPlace('helm'), aPlace('stern')];
  expect(clashingLimits({ ...bowToStern, places }, enough)).toEqual(['one-drop', 'tee-places']);
});

test('a unit that draws too much for the cable clashes with nothing but its current', () => {
  const devices = [aDevice('winch.n2k', 'bow', { len: 70 })];
  expect(clashingLimits({ ...bowToStern, devices, grades: [aGrade({ microOhmPerM: 1 })] }, enough)).toEqual([
    'current',
  ]);
});

test('fifty-one units are one too many, wherever they are', () => {
  const devices = Array.from({ length: 51 }, (_, n) => aDevice(`unit-${n}.n2k`, 'helm'));
  expect(clashingLimits({ ...bowToStern, devices, grades: [aGrade({ microOhmPerM: 1 })] }, enough)).toEqual([
    'device-count',
  ]);
});

test('where no way leads to a unit, no limit is to blame', () => {
  const places = [...bowToStern.places, aPlace('tender')];
  expect(
    clashingLimits({ ...bowToStern, places, devices: [aDevice('light.n2k', 'tender'), ...bowToStern.devices] }, enough),
  ).toEqual([]);
});

test('of any clash each limit is needed: without it the others can be kept, on six crowded boats', () => {
  let clashes = 0;
  for (let seed = 0; seed < 6; seed += 1) {
    const boat = ladderBoat(seed, { places: 12, devices: 8 });
    const grades = boat.grades.slice(1, 2).map((grade) => ({ ...grade, warnMm: 6000, failMm: 7000 }));
    const problem = { ...boat, grades, limits: { ...boat.limits, dropsMm: 5000 } };
    const found = clashingLimits(problem, enough);
    if (found.length === 0 || holdsSome(problem, enough)) continue;
    clashes += 1;
    const others = layoutLimits.filter((limit) => !found.includes(limit));
    expect(holdsSome(withoutLimits(problem, others), enough)).toBe(false);
    for (const limit of found) expect(holdsSome(withoutLimits(problem, [...others, limit]), enough)).toBe(true);
  }
  expect(clashes).toBeGreaterThan(3);
});

test('two things that are wrong are told one beside the other', () => {
  const places = [aPlace('bow', { tees: false }), aPlace('helm'), aPlace('stern')];
  const grades = [aGrade({ warnMm: 5000, failMm: 5000 })];
  const problem = { ...bowToStern, places, grades };
  expect(allClashes(problem, enough)).toEqual([['length'], ['one-drop', 'tee-places']]);
});

test('a problem that has a layout has no clash', () => {
  expect(allClashes(bowToStern, enough)).toEqual([]);
});
