import { expect, test } from 'vitest';
import { afterJobs, aJob } from '../../work/some-jobs.test-helper.ts';
import { pinnedOutOfTurn } from './pinned-out-of-turn.ts';
import { foundIn, waiting } from './work-case.test-helper.ts';

const jobs = (first: string, last: string) => [
  aJob('own:a', { name: 'first', day: first }),
  aJob('own:b', { name: 'between', after: afterJobs('own:a') }),
  aJob('own:c', { name: 'last', day: last, after: afterJobs('own:b') }),
];

test('two settled days the wrong way round are a fault, also with a job between', () => {
  expect(foundIn(pinnedOutOfTurn, { jobs: jobs('2027-03-05', '2027-03-04') })).toMatchObject([
    {
      level: 'fault',
      about: ['own:a', 'own:c'],
      says: 'First comes before last, and is settled for 2027-03-05, after 2027-03-04.',
    },
  ]);
});

test('the right way round, or on one day, they are none', () => {
  expect(foundIn(pinnedOutOfTurn, { jobs: jobs('2027-03-04', '2027-03-05') })).toEqual([]);
  expect(foundIn(pinnedOutOfTurn, { jobs: jobs('2027-03-05', '2027-03-05') })).toEqual([]);
});

test('what cures and what is calibrated is told of by rules of its own', () => {
  const first = aJob('seal:deck', { day: '2027-03-05' });
  const last = waiting('connect:radar', { first: 'seal:deck', why: 'cured-first', waitH: 24 }, { day: '2027-03-04' });
  expect(foundIn(pinnedOutOfTurn, { jobs: [first, last] })).toEqual([]);
});
