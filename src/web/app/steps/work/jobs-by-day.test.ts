import { expect, test } from 'vitest';
import { aWork } from '../../../../core/work/a-work.test-helper.ts';
import { jobNumbers } from '../../../../papers/work/job-numbers.ts';
import { jobsByDay } from './jobs-by-day.ts';

test('jobs stand by the day on which they begin, in the order of their numbers, those left out last', () => {
  const work = aWork();
  const groups = jobsByDay({ phases: work.phases, numbers: jobNumbers(work), done: new Set(['survey']) });
  expect(groups.map(({ title, jobs, doneCount }) => [title, jobs.length, doneCount])).toEqual([
    ['Mon 5 Apr', 4, 1],
    ['Tue 6 Apr', 2, 0],
    ['Wed 7 Apr', 1, 0],
    ['Fri 9 Apr', 1, 0],
    [undefined, 1, 0],
  ]);
  expect(groups[0]?.jobs.map(({ id }) => id)).toEqual(['paper:licence', 'survey', 'label', 'take-out:compass']);
});
