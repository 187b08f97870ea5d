import { expect, test } from 'vitest';
import { bruteOrder } from '../brute-order.test-helper.ts';
import { checkWorkAnswer } from '../check-work-answer.ts';
import type { WorkProblem } from '../problem.ts';
import { aDay, anItem, drawnWork, drawOf, someWork } from '../some-work.test-helper.ts';
import { hashed } from '../work-hash.ts';
import { answerOfSpots } from './answer-of-spots.test-helper.ts';
import { exactSearch } from './exact-search.ts';
import { workGround } from './ground.ts';
import { headsOf } from './heads.ts';
import { leastDark } from './least-dark.ts';
import { orderOf, reachOf } from './reach.ts';

/** The search by itself, which nobody has told of an order: what it costs, what of it does not hold, what it took. */
const searched = (problem: WorkProblem, work = 60_000) => {
  const ground = workGround(problem);
  const succs = ground.jobs.map((job) => job.succs.map(({ job: next }) => next));
  const [order, reach] = [orderOf(succs), reachOf(succs)];
  if (order === undefined || reach === undefined) throw new Error('Jobs wait for each other in a circle.');
  const heads = headsOf(ground);
  const below = { hardDark: 1, dark: Number.MAX_SAFE_INTEGER, lastDay: 0, ascents: 0, ends: 0 };
  const ask = { ground, heads, order, leastDark: leastDark({ ground, heads, order, reach }), below };
  const purse = { left: work };
  const { found, isWhole } = exactSearch({ ...ask, isEnough: () => false }, purse);
  if (found === undefined) return { isWhole, work: work - purse.left };
  const answer = answerOfSpots(problem, found);
  return { isWhole, cost: answer.cost, broken: checkWorkAnswer(problem, answer).broken, work: work - purse.left };
};

/** Small work, with waits short enough to fall within a day in every second one. */
const smallWork = (seed: number): WorkProblem => {
  const draw = drawOf(seed);
  const problem = drawnWork(draw, { jobs: 2 + draw(3), days: 3, perDay: 3, isEasy: seed % 4 > 0 });
  if (seed % 2 === 0) return problem;
  const jobs = problem.jobs.map((job) => ({
    ...job,
    after: job.after.map((link) => ({ ...link, wait: draw(3) })),
  }));
  return hashed({ ...problem, jobs });
};

/** Branches for all of it together when the bounds were last looked at: one that is lost or weaker takes more. */
const mostWork = 1955;

test('a search that knows of no order finds the cheapest there is by trying everything, in no more work than it took', () => {
  let all = 0;
  for (let seed = 200; seed < 270; seed += 1) {
    const problem = smallWork(seed);
    const least = bruteOrder(problem);
    const { isWhole, cost, broken = [], work } = searched(problem);
    expect({ seed, isWhole, cost, broken }).toEqual({ seed, isWhole: true, cost: least, broken: [] });
    all += work;
  }
  expect(all).toBeLessThanOrEqual(mostWork);
});

test('what puts something out may wait idle for what must wait for it', () => {
  const problem = someWork({
    jobs: [anItem('take-out'), anItem('try', { after: [{ job: 'take-out', wait: 2 }] })],
    days: 2,
    functions: [
      {
        id: 'depth',
        hard: false,
        ways: [
          { from: [], until: ['take-out'] },
          { from: ['try'], until: [] },
        ],
      },
    ],
  });
  // four half hours on the first day: later on that day it would be dark all night
  expect(searched(problem).cost).toEqual({ dark: 4, lastDay: 0, ascents: 0 });
});

test('what waits for a job of no length may begin with it', () => {
  const problem = someWork({
    jobs: [anItem('wires', { slots: 4, after: [{ job: 'word-given', wait: 0 }] }), anItem('word-given', { slots: 0 })],
    days: 2,
  });
  expect(searched(problem).cost).toEqual({ dark: 0, lastDay: 0, ascents: 0 });
});

test('work aloft is tried on later days too, for the mast may be down by then', () => {
  const problem = someWork({
    jobs: [anItem('antenna', { aloft: true }), anItem('rest', { slots: 4, notBefore: 1 })],
    days: [aDay(['one', 'two']), aDay(['one', 'two'], { mast: 'down' })],
  });
  expect(searched(problem).cost).toEqual({ dark: 0, lastDay: 1, ascents: 0 });
});

test('a hand that some job is given to is not changed for another like it', () => {
  const problem = someWork({ jobs: [anItem('any', { slots: 4 }), anItem('own', { slots: 4, hand: 'one' })], days: 2 });
  expect(searched(problem).cost).toEqual({ dark: 0, lastDay: 0, ascents: 0 });
});

test('what begins as something is put out may stand between it and what follows with its hands', () => {
  const after = (job: string) => ({ after: [{ job, wait: 0 }] });
  const problem = someWork({
    jobs: [
      anItem('a-take-out', { hand: 'one' }),
      anItem('b-beside', { slots: 3, hand: 'two', ...after('d-before') }),
      anItem('c-try', { slots: 3, hand: 'one', ...after('a-take-out') }),
      anItem('d-before', { hand: 'two' }),
    ],
    days: 2,
    functions: [
      {
        id: 'depth',
        hard: false,
        ways: [
          { from: [], until: ['a-take-out'] },
          { from: ['c-try'], until: [] },
        ],
      },
    ],
  });
  expect(searched(problem).cost).toEqual({ dark: 4, lastDay: 0, ascents: 0 });
});

test('a search that had to stop says so, and tries no more than it may', () => {
  const draw = drawOf(1002);
  const problem = drawnWork(draw, { jobs: 8, days: 5, perDay: 4, isEasy: true });
  for (const work of [1, 7, 30]) {
    const end = searched(problem, work);
    expect({ work: end.work, isWhole: end.isWhole }).toEqual({ work, isWhole: false });
  }
});

test('what is done by midnight is done that day, and a word given at midnight on the next', () => {
  const late = someWork({ jobs: [anItem('wires', { slots: 4 })], days: 2, from: 44 });
  expect(searched(late)).toMatchObject({ cost: { lastDay: 0 }, broken: [] });
  const early = someWork({ jobs: [anItem('word-given', { slots: 0, notBefore: 1 })], days: 2, from: 0 });
  expect(searched(early)).toMatchObject({ cost: { lastDay: 1 }, broken: [] });
});
