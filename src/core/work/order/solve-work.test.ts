import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bruteOrder } from './brute-order.test-helper.ts';
import { checkWorkAnswer, compareWorkCosts } from './check-work-answer.ts';
import { plainOrder } from './plain-order.ts';
import type { WorkCost, WorkProblem } from './problem.ts';
import { refitWork } from './refit-work.test-helper.ts';
import { solveWork, someOrder } from './solve-work.ts';
import { anItem, drawnWork, drawOf } from './some-work.test-helper.ts';
import { hashed } from './work-hash.ts';

describe('the order of the work', () => {
  test('is as cheap as the cheapest of all orders there are, and none named before is cheaper or bound above it', () => {
    let [held, stuck] = [0, 0];
    const room = { dark: 0, lastDay: 0, ascents: 0 };
    for (let seed = 0; seed < 80; seed += 1) {
      const problem = smallWork(seed);
      const least = bruteOrder(problem);
      const [first] = solveWork(problem, { work: 40 });
      for (const part of parts) room[part] += (least?.[part] ?? 0) - (first?.bound[part] ?? least?.[part] ?? 0);
      for (const work of [40, 200, 30_000])
        for (const answer of solveWork(problem, { work })) {
          const { broken } = checkWorkAnswer(problem, answer);
          const isProven = compared(answer.bound, answer.cost) === 0;
          expect({ seed, broken, over: over(answer.bound, least) }).toEqual({ seed, broken: [], over: [] });
          expect({ seed, status: answer.status }).toEqual({ seed, status: isProven ? 'proven' : 'gap' });
        }
      expect({ seed, cost: costOf(problem) }).toEqual({ seed, cost: least });
      const some = someOrder(problem, { work: 6000 });
      const broken = some === undefined ? [] : checkWorkAnswer(problem, some).broken;
      expect({ seed, isSome: some !== undefined, broken }).toEqual({ seed, isSome: least !== undefined, broken: [] });
      if (least === undefined) stuck += 1;
      else held += 1;
    }
    expect(Math.min(held, stuck)).toBeGreaterThan(20);
    for (const part of parts) expect({ part, room: room[part] <= mostRoom[part] }).toEqual({ part, room: true });
  });

  test('of a refit of 58 jobs is far less dark than one job after another, holds, and is the same in every run', () => {
    const problem = refitWork(drawOf(2), { units: 9, days: 32 });
    const answers = [...solveWork(problem, { work: 20_000 })];
    const last = answers.at(-1);
    if (last === undefined) throw new Error('No order was found.');
    expect(checkWorkAnswer(problem, last).broken).toEqual([]);
    expect(last.cost.dark).toBeLessThan((plainOrder(problem)?.dark ?? 0) / 5);
    expect([...solveWork(problem, { work: 20_000 })]).toEqual(answers);
  });

  test('with one hand more is never worse, and with one job more never better', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), (seed) => {
        const draw = drawOf(seed);
        const problem = drawnWork(draw, { jobs: 3 + draw(3), days: 4, perDay: 3, isEasy: draw(2) === 0 });
        const cost = costOf(problem);
        const hands = [...problem.hands, { id: 'hand-9', can: ['aloft'] as const }];
        const days = problem.days.map((day) => ({ ...day, hands: [...day.hands, 'hand-9'] }));
        expect(compared(costOf(hashed({ ...problem, hands, days })), cost)).toBeLessThanOrEqual(0);
        const more = anItem('j9', { slots: 1 + draw(3), after: [{ job: problem.jobs[0]?.id ?? '', wait: 0 }] });
        expect(compared(costOf(hashed({ ...problem, jobs: [...problem.jobs, more] })), cost)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 15 },
    );
  });

  test('holds by the checker for work of any kind, and is never worse than one job after another', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), (seed) => {
        const draw = drawOf(seed);
        const problem = drawnWork(draw, { jobs: 10 + draw(20), days: 24, perDay: 6, hands: 1 + draw(3), isEasy: true });
        const answers = [...solveWork(problem, { work: 3000 })];
        for (const answer of answers)
          expect({ seed, broken: checkWorkAnswer(problem, answer).broken }).toEqual({ seed, broken: [] });
        const plain = plainOrder(problem);
        const last = answers.at(-1);
        if (plain !== undefined) expect(compared(last?.cost, plain)).toBeLessThanOrEqual(0);
      }),
      { numRuns: 30 },
    );
  });
});

/** Work so small that every order of it can be tried; of every second one there is an order, mostly. */
const smallWork = (seed: number): WorkProblem => {
  const draw = drawOf(seed);
  return drawnWork(draw, {
    jobs: 2 + draw(3),
    days: 3,
    perDay: 3,
    hands: seed % 5 === 0 ? 1 : 2,
    isEasy: seed % 2 === 1,
  });
};

/** How far the bounds known before anything is tried lay below the least costs of all this work together; weaker ones leave more. */
const mostRoom: WorkCost = { dark: 320, lastDay: 11, ascents: 6 };

const parts = ['dark', 'lastDay', 'ascents'] as const;

/** In what a bound is above the least cost, which it may be in nothing: each part of it holds for every order. */
const over = (bound: WorkCost, least: WorkCost | undefined): string[] =>
  parts.filter((part) => least === undefined || bound[part] > least[part]);

const compared = (a: WorkCost | undefined, b: WorkCost | undefined): number => {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return compareWorkCosts(a, b);
};

/** The cost of the best order, which must be proven; absent where there is none. */
const costOf = (problem: WorkProblem): WorkCost | undefined => {
  const last = [...solveWork(problem, { work: 600_000 })].at(-1);
  expect(last?.status ?? 'proven').toBe('proven');
  return last?.cost;
};
