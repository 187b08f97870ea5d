import { expect, test } from 'vitest';
import { checkWorkAnswer, compareWorkCosts } from './check-work-answer.ts';
import type { WatchedFunction, WorkAnswer, WorkCost } from './problem.ts';
import { aDay, anItem, someWork } from './some-work.test-helper.ts';

const both = ['one', 'two'];
const depth = (...ways: WatchedFunction['ways']): readonly WatchedFunction[] => [{ id: 'depth', hard: false, ways }];
const workWith = (functions: readonly WatchedFunction[] = []) =>
  someWork({
    jobs: [anItem('in'), anItem('out')],
    days: [aDay(both, { counts: ['depth'] }), aDay(both, { counts: ['depth'] })],
    functions,
  });
/** Out at ten of the first day, in at half past nine of the second. */
const checked = (problem: ReturnType<typeof workWith>, own: Partial<WorkAnswer> = {}) =>
  checkWorkAnswer(problem, {
    problem: problem.hash,
    starts: [
      { job: 'out', day: 0, slot: 2, hands: ['one'] },
      { job: 'in', day: 1, slot: 0, hands: ['one'] },
    ],
    cost: { dark: 0, lastDay: 1, ascents: 0 },
    bound: { dark: 0, lastDay: 0, ascents: 0 },
    status: 'gap',
    work: 0,
    ...own,
  });

test('a way holds to the half hour before what ends it, and from the end of all that it waits for', () => {
  const darkOf = (...ways: WatchedFunction['ways']): number => checked(workWith(depth(...ways))).cost.dark;
  expect(darkOf({ from: [], until: [] })).toBe(0);
  // Out begins at half hour 20 of 96 and ends at 21; in begins at 66 and ends at 67.
  expect(darkOf({ from: [], until: ['out'] })).toBe(76);
  expect(darkOf({ from: [], until: ['in', 'out'] })).toBe(76);
  expect(darkOf({ from: ['out'], until: [] })).toBe(21);
  expect(darkOf({ from: ['in', 'out'], until: [] })).toBe(67);
  expect(darkOf({ from: ['out'], until: ['in'] })).toBe(21 + 30);
  expect(darkOf({ from: [], until: ['out'] }, { from: ['out'], until: [] })).toBe(1);
  expect(darkOf()).toBe(96);
  // A job that is no part of this work never comes: what waits for it never holds, what it would end goes on.
  expect(darkOf({ from: ['later'], until: [] })).toBe(96);
  expect(darkOf({ from: [], until: ['later'] })).toBe(0);
});

test('costs count in the order dark, last day, ascents', () => {
  const cost = (dark: number, lastDay: number, ascents: number): WorkCost => ({ dark, lastDay, ascents });
  const ascending = [cost(1, 2, 2), cost(1, 2, 3), cost(1, 3, 0), cost(2, 0, 0)];
  for (const [n, one] of ascending.entries())
    for (const [m, other] of ascending.entries())
      expect(Math.sign(compareWorkCosts(one, other))).toBe(Math.sign(n - m));
});

test('a cost, a bound or a proof that is not so is found out, and one that is passes', () => {
  const problem = workWith();
  const cost = { dark: 0, lastDay: 1, ascents: 0 };
  expect(checked(problem).broken).toEqual([]);
  expect(checked(problem, { cost: { ...cost, ascents: 1 } }).broken).toEqual([
    'The order says it costs 0 half hours dark, last day 1, 1 ascents; it costs 0 half hours dark, last day 1, 0 ascents.',
  ]);
  expect(checked(problem, { bound: cost }).broken).toEqual([]);
  expect(checked(problem, { bound: { ...cost, ascents: 1 } }).broken).toEqual([
    'The order says that none costs less than 0 half hours dark, last day 1, 1 ascents; it costs 0 half hours dark, last day 1, 0 ascents.',
  ]);
  expect(checked(problem, { bound: cost, status: 'proven' }).broken).toEqual([]);
  expect(checked(problem, { status: 'proven' }).broken).toEqual([
    'The order says it is proven, and its bound is lower.',
  ]);
  expect(checked(problem, { problem: 'another' })).toEqual({
    cost: { dark: 0, lastDay: 0, ascents: 0 },
    broken: ['This order was made for other work.'],
  });
});

test('each job is done once: none missing, none twice, none of another work', () => {
  const done = (...ids: readonly string[]) =>
    checked(workWith(), { starts: ids.map((job, n) => ({ job, day: 0, slot: n, hands: ['one'] })) });
  expect(done('in', 'out').broken).toHaveLength(1);
  expect(done('in').broken).toEqual(['out is never done.']);
  expect(done('in', 'out', 'out').broken).toEqual(['out is done 2 times.']);
  expect(done('in', 'out', 'up').broken).toEqual(['There is no job up.']);
  // Where the list is wrong, nothing else is measured.
  const start = { job: 'out', day: 7, slot: 0, hands: [] };
  expect(checked(workWith(), { starts: [start, start] }).broken).toEqual(['out is done 2 times.', 'in is never done.']);
  expect(done('in').cost).toEqual({ dark: 0, lastDay: 0, ascents: 0 });
});

test('what never may be dark is refused for half an hour, and what may be is only counted', () => {
  const ways: WatchedFunction['ways'] = [
    { from: [], until: ['out'] },
    { from: ['out'], until: [] },
  ];
  const cost = { dark: 1, lastDay: 1, ascents: 0 };
  expect(checked(workWith(depth(...ways)), { cost }).broken).toEqual([]);
  expect(checked(workWith(depth(...ways).map((one) => ({ ...one, hard: true }))), { cost }).broken).toEqual([
    'depth is dark for 1 half hours, and never may be.',
  ]);
  expect(checked(workWith(depth({ from: [], until: [] }).map((one) => ({ ...one, hard: true })))).broken).toEqual([]);
});
