import { expect, test } from 'vitest';
import { aJob } from '../../work/some-jobs.test-helper.ts';
import type { Job } from '../../work-shape.ts';
import { headingLineTooEarly } from './heading-line-too-early.ts';
import { foundIn, waiting } from './work-case.test-helper.ts';

const jobs = (heading: Partial<Job>, line: Partial<Job>) => [
  aJob('sea-trial:heading', { kind: 'sea-trial', ...heading }),
  waiting('sea-trial:radar', { first: 'sea-trial:heading', why: 'calibrated-first' }, { kind: 'sea-trial', ...line }),
];

test('a heading line settled for a day before the heading is swung is a fault', () => {
  const found = foundIn(headingLineTooEarly, { jobs: jobs({ day: '2027-03-04' }, { day: '2027-03-03' }) });
  expect(found).toMatchObject([
    { level: 'fault', says: expect.stringContaining('settled for 2027-03-03, before 2027-03-04') },
  ]);
});

test('so is one where the swing is left out', () => {
  expect(foundIn(headingLineTooEarly, { jobs: jobs({ leftOut: 'No time.' }, {}) })).toHaveLength(1);
});

test('the same day, or no day at all, is none', () => {
  expect(foundIn(headingLineTooEarly, { jobs: jobs({ day: '2027-03-03' }, { day: '2027-03-03' }) })).toEqual([]);
  expect(foundIn(headingLineTooEarly, { jobs: jobs({}, {}) })).toEqual([]);
});
