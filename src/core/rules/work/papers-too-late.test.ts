import { expect, test } from 'vitest';
import { aJob } from '../../work/some-jobs.test-helper.ts';
import type { Job } from '../../work-shape.ts';
import { papersTooLate } from './papers-too-late.ts';
import { foundIn } from './work-case.test-helper.ts';

const radios = (own: Partial<Job>): Job => aJob('power-up:radio', { kind: 'power-up', about: ['radio'], ...own });
const asked: Partial<Job> = { waitsFor: [{ what: 'paper', id: 'ship-radio-licence', on: '2027-03-20' }] };

test('radios settled for a day before their licence is there are a fault', () => {
  expect(foundIn(papersTooLate, { jobs: [radios({ ...asked, day: '2027-03-05' })] })).toMatchObject([
    {
      level: 'fault',
      about: ['power-up:radio'],
      says: expect.stringContaining('ship radio licence (there on 2027-03-20)'),
    },
  ]);
});

test('so are those that must be done by such a day, with a paper still to ask for on the first day of work', () => {
  const paper = aJob('paper:ship-number', { kind: 'paper', about: ['ship-number'] });
  const job = radios({ after: [{ job: paper.id, why: 'papers-first', waitH: 21 * 24 }] });
  expect(foundIn(papersTooLate, { jobs: [paper, job] }, { doneBy: '2027-03-21' })).toMatchObject([
    { says: expect.stringContaining('ship’s number (MMSI) (there on 2027-03-22)') },
  ]);
  expect(foundIn(papersTooLate, { jobs: [paper, job] }, { doneBy: '2027-03-22' })).toEqual([]);
});

test('later, or with no day settled, they are none', () => {
  expect(foundIn(papersTooLate, { jobs: [radios({ ...asked, day: '2027-03-20' })] })).toEqual([]);
  expect(foundIn(papersTooLate, { jobs: [radios(asked)] })).toEqual([]);
});
