import { expect, test } from 'vitest';
import { checkWorkAnswer } from './check-work-answer.ts';
import type { WorkCost, WorkDay, WorkItem, WorkProblem, WorkStart } from './problem.ts';
import { aDay, anItem, someWork } from './some-work.test-helper.ts';

const both = ['one', 'two'];
type Placed = readonly [job: string, day: number, slot: number, ...hands: string[]];
const startOf = ([job, day, slot, ...hands]: Placed): WorkStart => ({ job, day, slot, hands });
const workOn = (days: readonly Partial<WorkDay>[], ...jobs: readonly WorkItem[]): WorkProblem =>
  someWork({
    jobs,
    days: days.map((day) => aDay(both, day)),
    hands: [
      { id: 'one', can: ['aloft'] },
      { id: 'two', can: ['radio'] },
    ],
  });
const anyDays: readonly Partial<WorkDay>[] = [{}, {}, {}];

const checkOf = (problem: WorkProblem, placed: readonly Placed[], cost: WorkCost = nothing) =>
  checkWorkAnswer(problem, {
    problem: problem.hash,
    starts: placed.map(startOf),
    cost,
    bound: nothing,
    status: 'gap',
    work: 0,
  });
const nothing: WorkCost = { dark: 0, lastDay: 0, ascents: 0 };
/** What is broken once the cost is said rightly. */
const brokenOf = (problem: WorkProblem, ...placed: Placed[]): readonly string[] =>
  checkOf(problem, placed, checkOf(problem, placed).cost).broken;

/** An order that just holds, one a step past it, and what is said of that. Days have four half hours from nine. */
type Edge = readonly [
  what: string,
  problem: WorkProblem,
  holds: readonly Placed[],
  past: readonly Placed[],
  says: string,
];

const edges: readonly Edge[] = [
  [
    'two jobs of one hand',
    workOn(anyDays, anItem('a', { slots: 2 }), anItem('b')),
    [
      ['b', 0, 2, 'one'],
      ['a', 0, 0, 'one'],
    ],
    [
      ['b', 0, 1, 'one'],
      ['a', 0, 0, 'one'],
    ],
    'one does a and b at once.',
  ],
  [
    'a wait of an hour',
    workOn(anyDays, anItem('a'), anItem('b', { after: [{ job: 'a', wait: 2 }] })),
    [
      ['a', 0, 0, 'one'],
      ['b', 0, 3, 'two'],
    ],
    [
      ['a', 0, 0, 'one'],
      ['b', 0, 2, 'two'],
    ],
    'b begins before a is done and 2 half hours are waited.',
  ],
  [
    'a wait over night',
    workOn(anyDays, anItem('a', { slots: 2 }), anItem('b', { after: [{ job: 'a', wait: 47 }] })),
    [
      ['a', 0, 0, 'one'],
      ['b', 1, 1, 'one'],
    ],
    [
      ['a', 0, 0, 'one'],
      ['b', 1, 0, 'one'],
    ],
    'b begins before a is done and 47 half hours are waited.',
  ],
  [
    'the end of a day',
    workOn(anyDays, anItem('a', { slots: 3 })),
    [['a', 0, 1, 'one']],
    [['a', 0, 2, 'one']],
    'a lies outside the hours there are for it on day 0.',
  ],
  [
    'the beginning of a day',
    workOn(anyDays, anItem('a')),
    [['a', 1, 0, 'one']],
    [['a', 1, -1, 'one']],
    'a lies outside the hours there are for it on day 1.',
  ],
  [
    'first light',
    workOn([{ light: [19, 48] }, {}], anItem('a', { outside: true })),
    [['a', 0, 1, 'one']],
    [['a', 0, 0, 'one']],
    'a lies outside the hours there are for it on day 0.',
  ],
  [
    'last light aloft',
    workOn([{}, { light: [0, 20] }], anItem('a', { aloft: true })),
    [['a', 1, 1, 'one']],
    [['a', 1, 2, 'one']],
    'a lies outside the hours there are for it on day 1.',
  ],
  [
    'a day ashore for what is done ashore',
    workOn([{}, { afloat: false }], anItem('a', { state: 'ashore' })),
    [['a', 1, 0, 'one']],
    [['a', 0, 0, 'one']],
    'a begins on day 0, which is not fit for it.',
  ],
  [
    'a day afloat for what is done afloat',
    workOn([{}, { afloat: false }], anItem('a', { state: 'afloat' })),
    [['a', 0, 0, 'one']],
    [['a', 1, 0, 'one']],
    'a begins on day 1, which is not fit for it.',
  ],
  [
    'a mast that is down',
    workOn([{ mast: 'down' }, {}], anItem('a', { mast: 'down' })),
    [['a', 0, 0, 'one']],
    [['a', 1, 0, 'one']],
    'a begins on day 1, which is not fit for it.',
  ],
  [
    'the day it is to begin on',
    workOn(anyDays, anItem('a', { on: 1 })),
    [['a', 1, 0, 'one']],
    [['a', 0, 0, 'one']],
    'a begins on day 0; it is to begin on day 1.',
  ],
  [
    'the first day for it',
    workOn(anyDays, anItem('a', { notBefore: 1 })),
    [['a', 1, 0, 'one']],
    [['a', 0, 0, 'one']],
    'a begins on day 0, before day 1.',
  ],
  [
    'the last day for it',
    workOn(anyDays, anItem('a', { notAfter: 1 })),
    [['a', 1, 0, 'one']],
    [['a', 2, 0, 'one']],
    'a ends on day 2, after day 1.',
  ],
  [
    'the last day for what takes two',
    workOn(anyDays, anItem('a', { slots: 8, notAfter: 1 })),
    [['a', 0, 0, 'one']],
    [['a', 1, 0, 'one']],
    'a ends on day 2, after day 1.',
  ],
  [
    'the last day of the calendar',
    workOn(anyDays, anItem('a', { slots: 8 })),
    [['a', 1, 0, 'one']],
    [['a', 2, 0, 'one']],
    'a does not come to its end within the calendar.',
  ],
  [
    'the calendar',
    workOn(anyDays, anItem('a')),
    [['a', 2, 0, 'one']],
    [['a', 3, 0, 'one']],
    'a begins on day 3, which the calendar has not.',
  ],
  [
    'the length of a day',
    workOn(anyDays, anItem('a', { slots: 8 })),
    [['a', 0, 0, 'one']],
    [['a', 0, 1, 'one']],
    'a takes more than a day and does not begin with one.',
  ],
  [
    'days apart',
    workOn(anyDays, anItem('a', { apart: ['a', 'b'] }), anItem('b')),
    [
      ['a', 1, 0, 'one'],
      ['b', 0, 0, 'two'],
    ],
    [
      ['a', 1, 0, 'one'],
      ['b', 1, 3, 'two'],
    ],
    'a and b fall on the same day.',
  ],
  [
    'days apart from the end of a long job',
    workOn(anyDays, anItem('a', { apart: ['b'] }), anItem('b', { slots: 8 })),
    [
      ['a', 2, 0, 'one'],
      ['b', 0, 0, 'two'],
    ],
    [
      ['a', 1, 0, 'one'],
      ['b', 0, 0, 'two'],
    ],
    'a and b fall on the same day.',
  ],
  [
    'days apart before a long job',
    workOn(anyDays, anItem('a', { apart: ['b'], slots: 8 }), anItem('b')),
    [
      ['a', 0, 0, 'one'],
      ['b', 2, 0, 'two'],
    ],
    [
      ['a', 0, 0, 'one'],
      ['b', 1, 0, 'two'],
    ],
    'a and b fall on the same day.',
  ],
  [
    'two hands for what takes two',
    workOn(anyDays, anItem('a', { people: 2 })),
    [['a', 0, 0, 'one', 'two']],
    [['a', 0, 0, 'one', 'one']],
    'a is done by 2 hands; it takes 2.',
  ],
  [
    'one hand for what takes one',
    workOn(anyDays, anItem('a')),
    [['a', 0, 0, 'one']],
    [['a', 0, 0, 'one', 'two']],
    'a is done by 2 hands; it takes 1.',
  ],
  [
    'nobody for what is only waited for',
    workOn(anyDays, anItem('a', { slots: 0, people: 2, needs: ['yard'], hand: 'two' })),
    [['a', 0, 0]],
    [['a', 0, 0, 'one']],
    'a is done by 1 hands; it takes 0.',
  ],
  [
    'a hand who is there',
    workOn([{ hands: ['two'] }, {}], anItem('a')),
    [['a', 1, 0, 'one']],
    [['a', 0, 0, 'one']],
    'one is not there on day 0 for a.',
  ],
  [
    'the hand it is given to',
    workOn(anyDays, anItem('a', { hand: 'two' })),
    [['a', 0, 0, 'two']],
    [['a', 0, 0, 'one']],
    'a is given to two, who does not do it.',
  ],
  [
    'what one of two can',
    workOn(anyDays, anItem('a', { people: 1, needs: ['radio'] })),
    [['a', 0, 0, 'two']],
    [['a', 0, 0, 'one']],
    'Nobody who does a can radio.',
  ],
];

test.each(edges)('holds at the limit of %s, and refuses one step past it', (_, problem, holds, past, says) => {
  expect(brokenOf(problem, ...holds)).toEqual([]);
  expect(brokenOf(problem, ...past)).toEqual([says]);
  expect(checkOf(problem, past).cost).toEqual(nothing);
});

test('what waits for, or lies apart from, a job that lies nowhere is not measured against it', () => {
  const problem = workOn(anyDays, anItem('a'), anItem('b', { after: [{ job: 'a', wait: 1 }], apart: ['a'] }));
  const nowhere = (job: string) => [`${job} begins on day 3, which the calendar has not.`];
  expect(brokenOf(problem, ['a', 3, 0, 'one'], ['b', 1, 0, 'one'])).toEqual(nowhere('a'));
  expect(brokenOf(problem, ['a', 1, 0, 'one'], ['b', 3, 0, 'one'])).toEqual(nowhere('b'));
});

test('one hand named twice beside another is no third hand', () => {
  const problem = workOn(anyDays, anItem('a', { people: 2 }));
  expect(brokenOf(problem, ['a', 0, 0, 'one', 'two', 'two'])).toEqual(['a is done by 3 hands; it takes 2.']);
});

test('a long job for two goes on only on days on which both are there', () => {
  const problem = workOn([{}, { hands: ['two'] }, {}], anItem('a', { slots: 8, people: 2 }));
  expect(brokenOf(problem, ['a', 0, 0, 'one', 'two'])).toEqual([]);
  expect(checkOf(problem, [['a', 0, 0, 'one', 'two']]).cost.lastDay).toBe(2);
});

test('two hands have together what a job needs', () => {
  const problem = workOn(anyDays, anItem('a', { people: 2, needs: ['aloft', 'radio'] }));
  expect(brokenOf(problem, ['a', 0, 0, 'one', 'two'])).toEqual([]);
});

test('in foul weather nobody works outside or aloft; below they do', () => {
  const foul = [{ foul: true }, {}];
  expect(brokenOf(workOn(foul, anItem('a')), ['a', 0, 0, 'one'])).toEqual([]);
  for (const own of [{ outside: true }, { aloft: true }])
    expect(brokenOf(workOn(foul, anItem('a', own)), ['a', 0, 0, 'one'])).toContain(
      'a begins on day 0, which is not fit for it.',
    );
});

test('a long job has its hands from its first half hour to its last, over days that are not fit and a day they are away', () => {
  const long = anItem('a', { slots: 6, outside: true });
  const days = [{}, { foul: true }, { hands: ['two'] }, {}, {}];
  const then = anItem('b', { after: [{ job: 'a', wait: 0 }] });
  const problem = workOn(days, long, then);
  expect(
    checkOf(problem, [
      ['a', 0, 0, 'one'],
      ['b', 4, 0, 'one'],
    ]).cost.lastDay,
  ).toBe(4);
  expect(brokenOf(problem, ['a', 0, 0, 'one'], ['b', 4, 0, 'one'])).toEqual([]);
  expect(brokenOf(problem, ['a', 0, 0, 'one'], ['b', 3, 3, 'two'])).toEqual([
    'b begins before a is done and 0 half hours are waited.',
  ]);
  const free = workOn(days, long, anItem('c'));
  expect(brokenOf(free, ['a', 0, 0, 'one'], ['c', 1, 0, 'one'])).toEqual(['one does a and c at once.']);
  expect(brokenOf(free, ['a', 0, 0, 'one'], ['c', 3, 0, 'two'])).toEqual([]);
  expect(brokenOf(problem, ['a', 1, 0, 'one'], ['b', 4, 3, 'two'])).toContain(
    'a begins on day 1, which has no hours for it.',
  );
});

test('a job as long as the longest day is not long, and one of eight half hours takes two days of four', () => {
  expect(brokenOf(workOn(anyDays, anItem('a', { slots: 4 })), ['a', 2, 0, 'one'])).toEqual([]);
  expect(checkOf(workOn(anyDays, anItem('a', { slots: 8 })), [['a', 0, 0, 'one']]).cost.lastDay).toBe(1);
  expect(checkOf(workOn(anyDays, anItem('a', { slots: 9 })), [['a', 0, 0, 'one']]).cost.lastDay).toBe(2);
  // In the open the longest day has two half hours of light.
  const light = [{ light: [20, 22] }, { light: [19, 20] }, { light: [0, 19] }] as const;
  const outside = (slots: number) => workOn(light, anItem('a', { slots, outside: true }));
  expect(brokenOf(outside(2), ['a', 0, 2, 'one'])).toEqual([]);
  expect(checkOf(outside(3), [['a', 0, 0, 'one']]).cost.lastDay).toBe(1);
  expect(checkOf(outside(5), [['a', 0, 0, 'one']]).cost.lastDay).toBe(2);
});

test('ascents are the days with work aloft under a standing mast, each once', () => {
  const aloft = (id: string, slots = 1) => anItem(id, { aloft: true, slots });
  const problem = workOn([{}, {}, { mast: 'down' }], aloft('a'), aloft('b', 8), anItem('c'));
  const ascentsOf = (...placed: Placed[]) => checkOf(problem, placed).cost.ascents;
  expect(ascentsOf(['a', 0, 0, 'one'], ['b', 0, 0, 'two'], ['c', 2, 0, 'one'])).toBe(2);
  expect(ascentsOf(['a', 1, 0, 'one'], ['b', 1, 0, 'two'], ['c', 0, 0, 'one'])).toBe(1);
  expect(ascentsOf(['a', 2, 0, 'one'], ['b', 1, 0, 'two'], ['c', 0, 0, 'one'])).toBe(1);
});
