import { describe, expect, test } from 'vitest';
import type { Stuck } from '../../work-shape.ts';
import type { WorkItem } from './problem.ts';
import { aDay, anItem, someWork } from './some-work.test-helper.ts';
import { stuckOf } from './stuck-of.ts';

const stuckWith = (jobs: readonly WorkItem[], own: Partial<Parameters<typeof someWork>[0]> = {}): Stuck =>
  stuckOf(someWork({ jobs, days: 3, ...own }));

describe('why there is no order', () => {
  test('jobs wait for each other in a circle', () => {
    const wait = (job: string): Pick<WorkItem, 'after'> => ({ after: [{ job, wait: 0 }] });
    const { why, jobs, relax } = stuckWith([
      anItem('a', wait('c')),
      anItem('b', wait('a')),
      anItem('c', wait('b')),
      anItem('d'),
    ]);
    expect([why, new Set(jobs)]).toEqual(['circle', new Set(['a', 'b', 'c'])]);
    expect(new Set(relax.map(({ about }) => about.join(' after ')))).toEqual(
      new Set(['a after c', 'b after a', 'c after b']),
    );
  });

  test('nobody can do a job', () => {
    expect(stuckWith([anItem('a', { needs: ['radio'] })])).toMatchObject({
      why: 'nobody-can',
      jobs: ['a'],
      relax: [{ what: 'hand' }],
    });
  });

  test('she is never ashore, and the fewest days that were enough are told', () => {
    // Three days’ work for one hand, with a day of cure between two of them.
    const ashore = { state: 'ashore', slots: 4, people: 2 } as const;
    const jobs = [anItem('a', ashore), anItem('b', { ...ashore, after: [{ job: 'a', wait: 48 }] })];
    expect(stuckWith(jobs)).toMatchObject({
      why: 'never-ashore',
      jobs: ['a', 'b'],
      relax: [{ what: 'haul-out-days', days: 3 }],
    });
  });

  test('the days by which all must be done are too few, by two days for these hands', () => {
    const jobs = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((id) => anItem(id, { slots: 3, notAfter: 1 }));
    expect(stuckWith(jobs, { days: 8 })).toMatchObject({
      why: 'done-by-too-early',
      relax: [{ what: 'days', days: 2 }],
    });
  });

  test('pinned jobs clash, and either gives way', () => {
    const pinned = { on: 0, slots: 4, people: 2 } as const;
    const { why, relax } = stuckWith([anItem('a', pinned), anItem('b', pinned), anItem('c')]);
    expect([why, relax.map(({ about }) => about)]).toEqual(['pins-clash', [['a'], ['b']]]);
  });

  test('a part comes too late, by so many days', () => {
    const days = [0, 1, 2].map((day) => aDay(['one', 'two'], { afloat: day !== 1 }));
    const jobs = [anItem('a', { state: 'ashore', notBefore: 2 })];
    expect(stuckWith(jobs, { days })).toMatchObject({
      why: 'comes-too-late',
      relax: [{ what: 'earlier', about: ['a'], days: 1 }],
    });
  });

  test('the pump would be dark though it never may be', () => {
    const functions = [
      {
        id: 'bilge-pump',
        hard: true,
        ways: [
          { from: [], until: ['out'] },
          { from: ['in'], until: [] },
        ],
      },
    ];
    const jobs = [anItem('out'), anItem('in', { after: [{ job: 'out', wait: 0 }] })];
    expect(stuckWith(jobs, { functions })).toMatchObject({
      why: 'dark-though-never',
      functions: ['bilge-pump'],
      relax: [{ what: 'temporary-feed', about: ['bilge-pump'] }],
    });
  });

  test('nobody works in the dark outside', () => {
    const days = [aDay(['one'], { light: [0, 10] })];
    expect(stuckWith([anItem('a', { outside: true })], { days })).toMatchObject({ why: 'no-daylight', jobs: ['a'] });
  });

  test('of several reasons one is told, and that nothing alone is enough', () => {
    const pinned = { on: 0, slots: 4, people: 2 } as const;
    const functions = [
      {
        id: 'bilge-pump',
        hard: true,
        ways: [
          { from: [], until: ['out'] },
          { from: ['in'], until: [] },
        ],
      },
    ];
    const jobs = [
      anItem('a', pinned),
      anItem('b', pinned),
      anItem('out'),
      anItem('in', { after: [{ job: 'out', wait: 0 }] }),
    ];
    expect(stuckWith(jobs, { functions })).toMatchObject({ why: 'pins-clash', jobs: ['a', 'b'], relax: [] });
  });
});
