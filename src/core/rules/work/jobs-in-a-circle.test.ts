import { expect, test } from 'vitest';
import { afterJobs, aJob } from '../../work/some-jobs.test-helper.ts';
import { jobsInACircle } from './jobs-in-a-circle.ts';
import { foundIn } from './work-case.test-helper.ts';

const circle = [
  aJob('own:a', { name: 'first step', after: afterJobs('own:c') }),
  aJob('own:b', { name: 'second step', after: afterJobs('own:a') }),
  aJob('own:c', { name: 'third step', after: afterJobs('own:b') }),
];

test('jobs that wait for each other are a fault, each named', () => {
  const [found, ...others] = foundIn(jobsInACircle, { jobs: [aJob('survey'), ...circle] });
  expect(others).toEqual([]);
  expect(found?.level).toBe('fault');
  expect(found?.about).toEqual(['own:a', 'own:b', 'own:c']);
});

test('a chain is none, nor a circle one of which is left out', () => {
  expect(foundIn(jobsInACircle, { jobs: circle.slice(1) })).toEqual([]);
  const [first, ...others] = circle;
  expect(foundIn(jobsInACircle, { jobs: [aJob('own:a', { ...first, leftOut: 'So.' }), ...others] })).toEqual([]);
});
