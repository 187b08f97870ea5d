import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import { putTogether } from './put-together.ts';
import { aJob } from './some-jobs.test-helper.ts';

const jobs = [aJob('a', { slots: 12 }), aJob('b', { slots: 12 }), aJob('c:2', { phase: 2 })];
const phasesWith = (starts: readonly { phase: number; on: string }[]) =>
  putTogether({
    index: indexBoat({ ...aBoat().boat, work: { starts: [...starts], restDays: ['sat', 'sun'] } }),
    jobs,
    watchedIn: () => [],
    leaving: [],
    leads: new Map(),
  }).phases;

test('a phase without a first day begins on the day after the last of the one before', () => {
  const phases = phasesWith([{ phase: 1, on: '2027-03-05' }]);
  expect(phases.map(({ phase, days }) => [phase, days[0]?.date])).toEqual([
    [1, '2027-03-05'],
    [2, '2027-03-09'],
  ]);
  expect(phases[0]?.order?.starts.map(({ job, day }) => [job, day])).toEqual([
    ['a', 0],
    ['b', 3],
  ]);
});

test('a phase with a first day begins on it, and without any first day days are only counted', () => {
  const later = phasesWith([
    { phase: 1, on: '2027-03-05' },
    { phase: 2, on: '2027-10-01' },
  ]);
  expect(later[1]?.days[0]?.date).toBe('2027-10-01');
  expect(phasesWith([]).flatMap(({ days }) => days.flatMap(({ date }) => date ?? []))).toEqual([]);
});
