import { expect, test } from 'vitest';
import { aFinding, aPlan } from '../../../papers/lists/a-plan.test-helper.ts';
import { balloonNumbers, notesOf } from './notes.ts';

test('the number beside a note is the number in the balloon on the drawing', () => {
  const numbers = balloonNumbers([
    { number: 3, about: ['radar'] },
    { number: 8, about: ['depth'] },
  ]);
  const plan = aPlan({ findings: [aFinding('a', { about: ['bus', 'depth.n2k'] }), aFinding('b', { about: ['bus'] })] });
  expect(notesOf(plan, numbers).map((note) => note.balloon)).toEqual([8, undefined]);
});

test('a note about one unit on a backbone lights the unit and not the whole backbone', () => {
  const plan = aPlan({ findings: [aFinding('a', { about: ['bus', 'depth.n2k'] }), aFinding('b', { about: ['bus'] })] });
  expect(notesOf(plan, new Map()).map((note) => note.lights)).toEqual([['depth.n2k', 'depth'], ['bus']]);
});

test('dangers stand first, then faults, doubts and advice', () => {
  const levels = ['advice', 'doubt', 'danger', 'fault'] as const;
  const plan = aPlan({ findings: levels.map((level, at) => aFinding(`f${at}`, { level })) });
  expect(notesOf(plan, new Map()).map((note) => note.finding.level)).toEqual(['danger', 'fault', 'doubt', 'advice']);
});

test('the id of a line is lit as it is, not cut at its dot', () => {
  const plan = aPlan({ findings: [aFinding('a', { about: ['drop:bus~depth.n2k'] })] });
  expect(notesOf(plan, new Map())[0]?.lights).toEqual(['drop:bus~depth.n2k']);
});
