import { expect, test } from 'vitest';
import { aJob } from '../../work/some-jobs.test-helper.ts';
import type { Job } from '../../work-shape.ts';
import { pluggedBeforeCured } from './plugged-before-cured.ts';
import { foundIn, waiting } from './work-case.test-helper.ts';

const jobs = (sealed: Partial<Job>, plugged: Partial<Job>) => [
  aJob('seal:locker-stern', { kind: 'seal', about: ['locker-stern'], ...sealed }),
  waiting(
    'connect:gnss',
    { first: 'seal:locker-stern', why: 'cured-first', waitH: 24 },
    { kind: 'connect', about: ['gnss'], ...plugged },
  ),
];

test('plugged in on the day it was sealed is a fault, with the hours it cures', () => {
  expect(foundIn(pluggedBeforeCured, { jobs: jobs({ day: '2027-03-03' }, { day: '2027-03-03' }) })).toMatchObject([
    {
      level: 'fault',
      about: ['gnss', 'locker-stern'],
      measured: { value: 0, unit: 'h' },
      limit: { value: 24, unit: 'h' },
    },
  ]);
});

test('so is what waits for a seal that is left out', () => {
  expect(foundIn(pluggedBeforeCured, { jobs: jobs({ leftOut: 'Tape will do.' }, {}) })).toHaveLength(1);
});

test('a day later, or with no day settled, it is none', () => {
  expect(foundIn(pluggedBeforeCured, { jobs: jobs({ day: '2027-03-03' }, { day: '2027-03-04' }) })).toEqual([]);
  expect(foundIn(pluggedBeforeCured, { jobs: jobs({}, { day: '2027-03-03' }) })).toEqual([]);
});
