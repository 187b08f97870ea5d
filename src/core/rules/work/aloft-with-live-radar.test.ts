import { expect, test } from 'vitest';
import { aJob } from '../../work/some-jobs.test-helper.ts';
import type { Job } from '../../work-shape.ts';
import { aloftWithLiveRadar } from './aloft-with-live-radar.ts';
import { foundIn } from './work-case.test-helper.ts';

const jobs = (mast: string, radar: string, own: Partial<Job> = {}) => [
  aJob('mount-aloft:lamp', { kind: 'mount-aloft', aloft: true, day: mast, apart: ['power-up:radar'], ...own }),
  aJob('power-up:radar', { kind: 'power-up', day: radar, about: ['gnss'], apart: ['mount-aloft:lamp'] }),
];

test('somebody aloft on the day a radar is first switched on is a danger', () => {
  expect(foundIn(aloftWithLiveRadar, { jobs: jobs('2027-03-02', '2027-03-02') })).toMatchObject([
    { level: 'danger', about: ['gnss'], says: expect.stringContaining('On 2027-03-02 somebody is aloft') },
  ]);
});

test('on another day it is none, nor where it is locked off, so that the two are not kept apart', () => {
  expect(foundIn(aloftWithLiveRadar, { jobs: jobs('2027-03-02', '2027-03-03') })).toEqual([]);
  expect(foundIn(aloftWithLiveRadar, { jobs: jobs('2027-03-02', '2027-03-02', { apart: [] }) })).toEqual([]);
});
