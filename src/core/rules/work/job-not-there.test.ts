import { expect, test } from 'vitest';
import type { Work } from '../../boat/work.ts';
import { aJob } from '../../work/some-jobs.test-helper.ts';
import { jobNotThere } from './job-not-there.ts';
import { foundIn } from './work-case.test-helper.ts';

test('a job named in the file that the plan has not is a doubt, each once', () => {
  const work: Work = {
    jobs: [
      { job: 'take-out:gone', leftOut: 'So.' },
      { job: 'survey', after: ['take-out:gone', 'label:9'] },
    ],
    own: [{ id: 'paint', name: 'Paint', hoursH: 1, after: ['survey'] }],
  };
  expect(foundIn(jobNotThere, { jobs: [aJob('survey'), aJob('own:paint')] }, work)).toMatchObject([
    { level: 'doubt', about: ['label:9', 'take-out:gone'] },
  ]);
});

test('jobs that are there are none', () => {
  expect(foundIn(jobNotThere, { jobs: [aJob('survey')] }, { jobs: [{ job: 'survey', hoursH: 3 }] })).toEqual([]);
});
