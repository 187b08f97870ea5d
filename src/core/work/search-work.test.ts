import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { WorkParts } from './put-together.ts';
import { searchWork } from './search-work.ts';
import { afterJobs, aJob, sounderJobs, watchedDepth } from './some-jobs.test-helper.ts';

const parts: WorkParts = {
  index: indexBoat({ ...aBoat().boat, work: { starts: [{ phase: 1, on: '2027-03-01' }] } }),
  jobs: [...sounderJobs, aJob('later:2', { phase: 2, after: afterJobs() })],
  watchedIn: (phase) => (phase === 1 ? [watchedDepth] : []),
  leaving: [],
  leads: new Map(),
};

test('the quick order comes first, every later one is no worse, and the last of every phase is proven', () => {
  const found = [...searchWork(parts, { work: 20_000 })];
  const darkH = found.map(({ phases }) =>
    phases.reduce((sum, { order }) => sum + (order?.cost.darkH ?? Number.NaN), 0),
  );
  expect(found[0]?.phases.map(({ phase }) => phase)).toEqual([1, 2]);
  for (const [at, hours] of darkH.slice(1).entries()) expect(hours).toBeLessThanOrEqual(darkH[at] ?? Number.NaN);
  expect(found.at(-1)?.phases.map(({ order }) => order?.status)).toEqual(['proven', 'proven']);
});

test('a later phase begins after the last day that was found for the one before', () => {
  const last = [...searchWork(parts, { work: 20_000 })].at(-1);
  const [one, other] = last?.phases ?? [];
  const end = one?.days[one.order?.cost.lastDay ?? -1]?.date;
  expect((other?.days[0]?.date ?? '') > (end ?? '9')).toBe(true);
});
