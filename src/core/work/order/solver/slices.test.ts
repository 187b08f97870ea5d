import { expect, test } from 'vitest';
import type { WatchedFunction, WorkItem } from '../problem.ts';
import { aDay, anItem, someWork } from '../some-work.test-helper.ts';
import { workGround } from './ground.ts';
import { slicesOf } from './slices.ts';

/** Jobs by what each waits for. */
const jobsOf = (after: Readonly<Record<string, readonly string[]>>): WorkItem[] =>
  Object.entries(after).map(([id, list]) => anItem(id, { after: list.map((job) => ({ job, wait: 0 })) }));

type Ways = readonly (readonly [from: readonly string[], until: readonly string[]])[];
const watched = (id: string, ...ways: Ways): WatchedFunction => ({
  id,
  hard: false,
  ways: ways.map(([from, until]) => ({ from: [...from], until: [...until] })),
});

/** By name, the jobs done at a stretch, those alone left out, and what is better done before each job. */
const sliced = (
  jobs: readonly WorkItem[],
  functions: readonly WatchedFunction[],
  counts = functions.map(({ id }) => id),
) => {
  const problem = someWork({ jobs, days: [aDay(['one'], { counts })], functions });
  const { groups, groupOf, before } = slicesOf(workGround(problem));
  const name = (job: number): string => problem.jobs[job]?.id ?? '';
  for (const [group, members] of groups.entries()) for (const job of members) expect(groupOf[job]).toBe(group);
  return {
    groups: groups.filter(({ length }) => length > 1).map((group) => group.map(name).join(' ')),
    before: Object.fromEntries(
      before.flatMap((list, job) => (list.length === 0 ? [] : [[name(job), list.map(name).join(' ')]])),
    ),
  };
};

const free = { groups: [], before: {} };

test('a new way that nothing forbids is better begun before the old one ends', () => {
  const jobs = jobsOf({ fit: [], join: [], strip: [] });
  const old = watched('depth', [[], ['strip']], [['fit', 'join'], []]);
  expect(sliced(jobs, [old])).toEqual({ groups: [], before: { strip: 'fit join' } });
  // what is always there, what never counts and what has no other way
  expect(sliced(jobs, [watched('depth', [[], ['strip']], [['fit'], []], [[], []])])).toEqual(free);
  expect(sliced(jobs, [old], [])).toEqual(free);
  expect(sliced(jobs, [watched('depth', [[], ['strip']])])).toEqual(free);
  // one job that ends the old way and begins the new one is a stretch by itself
  expect(sliced(jobs, [watched('depth', [[], ['strip']], [['strip'], []])])).toEqual(free);
});

test('where the new way must wait for the old one, all between them is one stretch, by the shorter way', () => {
  const jobs = jobsOf({
    aside: ['strip'],
    fit: ['strip'],
    join: ['fit'],
    last: ['join'],
    longer: ['fit', 'join'],
    strip: [],
  });
  expect(sliced(jobs, [watched('depth', [[], ['strip']], [['join'], []])])).toEqual({
    groups: ['fit join strip'],
    before: {},
  });
  const two = watched('depth', [[], ['strip']], [['longer'], []], [['fit'], []]);
  expect(sliced(jobs, [two]).groups).toEqual(['fit strip']);
  // a way that comes and ends again follows neither itself nor one that was there before
  const between = watched('depth', [[], ['strip']], [['aside'], ['join']], [['last'], []]);
  expect(sliced(jobs, [between]).groups).toContain('join last');
  // of several jobs of a way each counts, and each end is looked at by itself
  expect(sliced(jobs, [watched('depth', [[], ['strip']], [['fit', 'aside'], []])]).groups).toEqual(['aside fit strip']);
  const ends = jobsOf({ clear: [], fit: ['strip'], late: ['clear'], spare: [], strip: [] });
  const both = watched('depth', [[], ['clear', 'strip']], [['fit'], []], [['late', 'spare'], []]);
  expect(sliced(ends, [both])).toEqual({ groups: ['clear late', 'fit strip'], before: {} });
  // a way that stays is sought before one that ends again
  const passing = watched('depth', [[], ['strip']], [['spare'], ['last']], [['other'], []]);
  const more = [...jobs, ...jobsOf({ other: [], spare: [] })];
  expect(sliced(more, [passing])).toMatchObject({ before: { strip: 'other' } });
});

test('what one way makes better done before is kept to by the next', () => {
  const jobs = jobsOf({ fit: [], lay: [], strip: [], take: [] });
  const one = watched('depth', [[], ['strip']], [['fit'], []]);
  const other = watched('vhf', [[], ['fit']], [['strip'], []]);
  expect(sliced(jobs, [one, other]).before).toEqual({ strip: 'fit' });
  expect(sliced(jobs, [one, watched('vhf', [[], ['take']], [['lay'], []])]).before).toEqual({
    strip: 'fit',
    take: 'lay',
  });
});

test('stretches that share a job, or that wait for each other in turns, are one', () => {
  const depth = watched('depth', [[], ['a-1']], [['a-2'], []]);
  const vhf = watched('vhf', [[], ['b-1']], [['b-2'], []]);
  const apart = { 'a-1': [], 'a-2': ['a-1'], 'b-1': [], 'b-2': ['b-1'] };
  expect(sliced(jobsOf(apart), [depth, vhf]).groups).toEqual(['a-1 a-2', 'b-1 b-2']);
  expect(sliced(jobsOf({ ...apart, 'b-1': ['a-2'] }), [depth, vhf]).groups).toEqual(['a-1 a-2', 'b-1 b-2']);
  const crossed = { ...apart, 'a-2': ['a-1', 'b-1'], 'b-2': ['a-1', 'b-1'] };
  expect(sliced(jobsOf(crossed), [depth, vhf]).groups).toEqual(['a-1 a-2 b-1 b-2']);
  expect(sliced(jobsOf({ ...crossed, d: ['b-2'] }), [depth, vhf]).groups).toEqual(['a-1 a-2 b-1 b-2']);
  // by way of a job in neither, which waits for the one and is waited for by the other
  const between = { ...apart, 'b-2': ['a-1', 'b-1'], c: ['b-1'], 'a-2': ['a-1', 'c'] };
  expect(sliced(jobsOf(between), [depth, vhf]).groups).toEqual(['a-1 a-2 b-1 b-2 c']);
  const shared = watched('vhf', [[], ['a-2']], [['b-1'], []]);
  expect(sliced(jobsOf({ ...apart, 'b-1': ['a-2'] }), [depth, shared]).groups).toEqual(['a-1 a-2 b-1']);
});
