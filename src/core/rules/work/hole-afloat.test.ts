import { expect, test } from 'vitest';
import type { Work } from '../../boat/work.ts';
import { aJob } from '../../work/some-jobs.test-helper.ts';
import type { Job } from '../../work-shape.ts';
import { holeAfloat } from './hole-afloat.ts';
import { foundIn } from './work-case.test-helper.ts';

const own = (state?: 'afloat' | 'ashore'): Work => ({
  own: [
    { id: 'bore', name: 'Bore for the log', hoursH: 2, throughHull: true, ...(state === undefined ? {} : { state }) },
  ],
});
const bore = (parts: Partial<Job>): Job => aJob('own:bore', { name: 'Bore for the log', place: 'helm', ...parts });

test('a hole below the waterline listed afloat is a danger', () => {
  expect(foundIn(holeAfloat, { jobs: [bore({ state: 'afloat' })] }, own('afloat'))).toMatchObject([
    { level: 'danger', about: ['helm'], says: expect.stringContaining('while she is afloat') },
  ]);
});

test('so is one settled for a day on which she floats, and none for a day ashore', () => {
  const job = bore({ state: 'ashore', day: '2027-03-03' });
  expect(foundIn(holeAfloat, { jobs: [job] }, own())).toHaveLength(1);
  const ashore = [{ from: '2027-03-02', to: '2027-03-05' }];
  expect(foundIn(holeAfloat, { jobs: [job] }, { ...own(), ashore })).toEqual([]);
  expect(foundIn(holeAfloat, { jobs: [job], taken: [{ what: 'ashore', from: 1, to: 4 }] }, own())).toEqual([]);
});

test('ashore and without a day it is none', () => {
  expect(foundIn(holeAfloat, { jobs: [bore({ state: 'ashore' })] }, own())).toEqual([]);
});
