import { expect, test } from 'vitest';
import { afterJobs, aJob } from '../../work/some-jobs.test-helper.ts';
import type { Watched } from '../../work-shape.ts';
import { pumpWithoutFeed } from './pump-without-feed.ts';
import { foundIn } from './work-case.test-helper.ts';

const panel = aJob('panel:main-panel', { kind: 'panel', about: ['main-panel'], after: afterJobs('temporary-feed') });
const feed = aJob('temporary-feed', { kind: 'temporary-feed', about: ['bilge-pump'] });
const out = aJob('take-temporary-feed-out', { kind: 'take-temporary-feed-out', after: afterJobs(panel.id) });
const functions: Watched[] = [
  {
    function: 'bilge-pump',
    hard: true,
    ways: [
      { by: [], from: [], until: [panel.id] },
      { by: [], from: [panel.id], until: [] },
      { by: [feed.id], from: [feed.id], until: [out.id] },
    ],
  },
];

test('a panel opened with no temporary feed is a danger', () => {
  const jobs = [panel, { ...feed, leftOut: 'An afternoon only.' }, out];
  expect(foundIn(pumpWithoutFeed, { jobs, functions })).toMatchObject([
    { level: 'danger', about: ['main-panel'], says: expect.stringContaining('can fill and sink at her berth') },
  ]);
});

test('so is one opened before the feed is there', () => {
  expect(foundIn(pumpWithoutFeed, { jobs: [{ ...panel, after: [] }, feed, out], functions })).toHaveLength(1);
});

test('with the feed, or ashore, it is none', () => {
  expect(foundIn(pumpWithoutFeed, { jobs: [panel, feed, out], functions })).toEqual([]);
  const jobs = [{ ...panel, state: 'ashore' as const }, { ...feed, leftOut: 'She is ashore.' }, out];
  expect(foundIn(pumpWithoutFeed, { jobs, functions })).toEqual([]);
});
