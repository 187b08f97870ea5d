import { expect, test } from 'vitest';
import { aJob } from '../../work/some-jobs.test-helper.ts';
import type { Job } from '../../work-shape.ts';
import { leavesBeforeTrial } from './leaves-before-trial.ts';
import { foundIn } from './work-case.test-helper.ts';

const jobs = (leaving: Partial<Job>, trial: Partial<Job>) => [
  aJob('leaving', { kind: 'leaving', about: ['radio'], ...leaving }),
  aJob('sea-trial', { kind: 'sea-trial', ...trial }),
];

test('what leaves before the sea trial is a doubt', () => {
  expect(foundIn(leavesBeforeTrial, { jobs: jobs({ day: '2027-03-02' }, { day: '2027-03-05' }) })).toMatchObject([
    {
      level: 'doubt',
      about: ['radio'],
      says: expect.stringContaining('on 2027-03-02, before the sea trial on 2027-03-05'),
    },
  ]);
});

test('so is what leaves where the sea trial is left out', () => {
  expect(foundIn(leavesBeforeTrial, { jobs: jobs({}, { leftOut: 'Winter.' }) })).toHaveLength(1);
});

test('after it, or with no days settled, it is none', () => {
  expect(foundIn(leavesBeforeTrial, { jobs: jobs({ day: '2027-03-06' }, { day: '2027-03-05' }) })).toEqual([]);
  expect(foundIn(leavesBeforeTrial, { jobs: jobs({}, {}) })).toEqual([]);
});
