import { describe, expect, test } from 'vitest';
import { checkWorkAnswer } from './check-work-answer.ts';
import type { WorkAnswer, WorkItem, WorkStart } from './problem.ts';
import { aDay, anItem, someWork } from './some-work.test-helper.ts';

const both = ['one', 'two'];
const work = (jobs: readonly WorkItem[], own: Partial<Parameters<typeof someWork>[0]> = {}) =>
  someWork({ jobs, days: [aDay(both), aDay(both), aDay(both, { afloat: false })], ...own });

const start = (job: string, day: number, slot: number, ...hands: readonly string[]): WorkStart => ({
  job,
  day,
  slot,
  hands,
});

const brokenOf = (
  problem: ReturnType<typeof work>,
  starts: readonly WorkStart[],
  cost: Partial<WorkAnswer['cost']> = {},
): readonly string[] => {
  const said = { dark: 0, lastDay: Math.max(0, ...starts.map(({ day }) => day)), ascents: 0, ...cost };
  return checkWorkAnswer(problem, {
    problem: problem.hash,
    starts,
    cost: said,
    bound: { dark: 0, lastDay: 0, ascents: 0 },
    status: 'gap',
    work: 0,
  }).broken;
};

describe('the checker of an order', () => {
  test('counts the half hours in which no way of a function holds, midnight to midnight of the days that count', () => {
    const functions = [
      {
        id: 'depth',
        hard: false,
        ways: [
          { from: [], until: ['out'] },
          { from: ['in'], until: [] },
        ],
      },
    ];
    const days = [aDay(both, { counts: ['depth'] }), aDay(both), aDay(both, { counts: ['depth'] })];
    const problem = someWork({ jobs: [anItem('in'), anItem('out')], days, functions });
    // Out at 10:00 of day 0, work beginning at 9:00; in at 9:30 of day 2; day 1 does not count: 14 h and 9.5 h.
    const starts = [start('out', 0, 2, 'one'), start('in', 2, 0, 'one')];
    expect(brokenOf(problem, starts, { dark: 28 + 19 })).toEqual([]);
    expect(brokenOf(problem, starts, { dark: 46 })).toHaveLength(1);
    const never = { ...problem, functions: functions.map((one) => ({ ...one, hard: true })) };
    expect(brokenOf(never, starts, { dark: 47 })).toEqual(['depth is dark for 47 half hours, and never may be.']);
  });

  test.each<[string, readonly WorkItem[], readonly WorkStart[], RegExp]>([
    [
      'a hand at two jobs at once',
      [anItem('a', { slots: 2 }), anItem('b')],
      [start('a', 0, 0, 'one'), start('b', 0, 1, 'one')],
      /at once/,
    ],
    [
      'a cure not waited for',
      [anItem('a'), anItem('b', { after: [{ job: 'a', wait: 2 }] })],
      [start('a', 0, 0, 'one'), start('b', 0, 2, 'two')],
      /2 half hours are waited/,
    ],
    ['work after the end of the day', [anItem('a', { slots: 3 })], [start('a', 0, 2, 'one')], /outside the hours/],
    ['one person for what takes two', [anItem('a', { people: 2 })], [start('a', 0, 0, 'one')], /takes 2/],
    ['somebody aloft who may not', [anItem('a', { needs: ['aloft'] })], [start('a', 0, 0, 'one')], /can aloft/],
    ['work ashore while she floats', [anItem('a', { state: 'ashore' })], [start('a', 0, 0, 'one')], /not fit/],
    [
      'two that must lie apart on one day',
      [anItem('a', { apart: ['b'] }), anItem('b')],
      [start('a', 0, 0, 'one'), start('b', 0, 2, 'two')],
      /same day/,
    ],
    ['work before its parts are there', [anItem('a', { notBefore: 1 })], [start('a', 0, 0, 'one')], /before day 1/],
    ['another day than the one it was given', [anItem('a', { on: 1 })], [start('a', 2, 0, 'one')], /day 1/],
    ['work after the last day for it', [anItem('a', { notAfter: 1 })], [start('a', 2, 0, 'one')], /after day 1/],
    [
      'another hand than the one it was given to',
      [anItem('a', { hand: 'two' })],
      [start('a', 0, 0, 'one')],
      /given to two/,
    ],
    ['a job left undone', [anItem('a')], [], /never done/],
    ['a job done twice', [anItem('a')], [start('a', 0, 0, 'one'), start('a', 1, 0, 'one')], /2 times/],
    [
      'a long job that does not begin with a day',
      [anItem('a', { slots: 6 })],
      [start('a', 0, 1, 'one')],
      /begin with one/,
    ],
  ])('refuses %s', (_, jobs, starts, says) => {
    expect(brokenOf(work(jobs), starts).join(' ')).toMatch(says);
  });

  test('lets a long job have its hands for whole days, and nobody else them', () => {
    const problem = work([anItem('a', { slots: 6 }), anItem('b')]);
    expect(brokenOf(problem, [start('a', 0, 0, 'one'), start('b', 1, 3, 'two')], { lastDay: 1 })).toEqual([]);
    expect(brokenOf(problem, [start('a', 0, 0, 'one'), start('b', 1, 3, 'one')], { lastDay: 1 })).toHaveLength(1);
  });
});
