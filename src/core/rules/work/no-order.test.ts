import { expect, test } from 'vitest';
import { afterJobs, aJob } from '../../work/some-jobs.test-helper.ts';
import { noOrder } from './no-order.ts';
import { foundIn } from './work-case.test-helper.ts';

const stuck = {
  why: 'never-ashore' as const,
  jobs: ['own:hull'],
  functions: [],
  relax: [{ what: 'haul-out-days' as const, about: [], days: 2 }],
};

test('a phase whose jobs have no order is a fault, with the reason and what would be enough', () => {
  expect(foundIn(noOrder, { jobs: [aJob('own:hull', { name: 'scrub the hull' })], stuck })).toMatchObject([
    {
      level: 'fault',
      about: ['own:hull'],
      says: 'The jobs of phase 1 have no order, for some want her ashore, and she never is on a day of work: scrub the hull.',
      cure: 'Any one of these is enough: 2 days more ashore.',
    },
  ]);
});

test('where another rule says why, it says nothing', () => {
  const jobs = [aJob('own:a', { after: afterJobs('own:b') }), aJob('own:b', { after: afterJobs('own:a') })];
  expect(foundIn(noOrder, { jobs, stuck: { ...stuck, why: 'circle', jobs: ['own:a', 'own:b'] } })).toEqual([]);
});

test('a phase with an order is none', () => {
  expect(foundIn(noOrder, { jobs: [aJob('survey')] })).toEqual([]);
});
