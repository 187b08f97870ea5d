import { describe, expect, test } from 'vitest';
import { checkWorkAnswer, compareWorkCosts } from './check-work-answer.ts';
import type { WorkCost, WorkProblem } from './problem.ts';
import { refitWork } from './refit-work.test-helper.ts';
import { solveWork } from './solve-work.ts';
import { drawnWork, drawOf } from './some-work.test-helper.ts';

/** Six to eight jobs on five days, for one hand or two. */
const someJobs = (seed: number): WorkProblem => {
  const draw = drawOf(seed);
  return drawnWork(draw, { jobs: 6 + draw(3), days: 5, perDay: 4, hands: 1 + draw(2), isEasy: true });
};

/**
 * By seed, the least cost of work drawn by lot, as a general solver of integer programmes found it: dark, last day, ascents;
 * and the places tried for its proof, of which a bound that is lost or weaker takes more.
 */
const leastCosts: Readonly<Record<number, readonly [number, number, number, mostWork: number]>> = {
  1002: [32, 4, 0, 2637],
  1005: [22, 4, 0, 2443],
  1007: [0, 3, 1, 15],
  1013: [0, 4, 0, 15],
  1016: [51, 4, 0, 2696],
  1017: [49, 4, 1, 2394],
  1022: [51, 3, 1, 2589],
  1023: [0, 2, 1, 2366],
  1024: [53, 4, 0, 2913],
  1025: [20, 3, 1, 2485],
  1026: [2, 3, 1, 2496],
  1028: [3, 4, 1, 2450],
  1032: [0, 4, 1, 3561],
  1034: [4, 4, 1, 3127],
  1037: [0, 2, 0, 195],
  1038: [0, 4, 0, 2482],
};

/** How far the bounds known before anything is tried lie below what it costs, all together: a weaker bound leaves more. */
const mostRoom: WorkCost = { dark: 112, lastDay: 6, ascents: 4 };

/** By units and seed, what a refit costs at most after three thousand places, and the least its bound may be: far from proven, but no worse than it was. */
const refits: readonly (readonly [units: number, seed: number, cost: WorkCost, bound: WorkCost])[] = [
  [2, 0, { dark: 0, lastDay: 8, ascents: 0 }, { dark: 0, lastDay: 8, ascents: 0 }],
  [3, 0, { dark: 0, lastDay: 8, ascents: 0 }, { dark: 0, lastDay: 8, ascents: 0 }],
  [3, 1, { dark: 309, lastDay: 12, ascents: 0 }, { dark: 11, lastDay: 12, ascents: 0 }],
  [4, 0, { dark: 0, lastDay: 9, ascents: 1 }, { dark: 0, lastDay: 9, ascents: 1 }],
  [4, 1, { dark: 512, lastDay: 12, ascents: 1 }, { dark: 11, lastDay: 12, ascents: 1 }],
  [4, 2, { dark: 0, lastDay: 9, ascents: 1 }, { dark: 0, lastDay: 4, ascents: 1 }],
  [6, 1, { dark: 98, lastDay: 14, ascents: 1 }, { dark: 11, lastDay: 12, ascents: 1 }],
  [6, 2, { dark: 27, lastDay: 11, ascents: 1 }, { dark: 0, lastDay: 10, ascents: 1 }],
];

describe('work for an order', () => {
  test('the least cost is proven in no more work than it was, and is what another solver found', () => {
    const room = { dark: 0, lastDay: 0, ascents: 0 };
    for (const [seed, [dark, lastDay, ascents, mostWork]] of Object.entries(leastCosts)) {
      const answers = [...solveWork(someJobs(Number(seed)), { work: 12_000 })];
      const [first, last] = [answers[0], answers.at(-1)];
      const cost = { dark, lastDay, ascents };
      expect({ seed, status: last?.status, cost: last?.cost }).toEqual({ seed, status: 'proven', cost });
      expect({ seed, isLess: (last?.work ?? 0) <= mostWork }).toEqual({ seed, isLess: true });
      room.dark += dark - (first?.bound.dark ?? 0);
      room.lastDay += lastDay - (first?.bound.lastDay ?? 0);
      room.ascents += ascents - (first?.bound.ascents ?? 0);
    }
    expect(room.dark).toBeLessThanOrEqual(mostRoom.dark);
    expect(room.lastDay).toBeLessThanOrEqual(mostRoom.lastDay);
    expect(room.ascents).toBeLessThanOrEqual(mostRoom.ascents);
  });

  test.each(refits)(
    'a refit of %i units drawn by %i is as good as it was after so much work',
    (units, seed, most, floor) => {
      const problem = refitWork(drawOf(seed), { units, days: 8 + 2 * units });
      const last = [...solveWork(problem, { work: 3000 })].at(-1);
      if (last === undefined) throw new Error('No order was found.');
      expect(checkWorkAnswer(problem, last).broken).toEqual([]);
      expect(compareWorkCosts(last.cost, most)).toBeLessThanOrEqual(0);
      expect(last.bound.dark).toBeGreaterThanOrEqual(floor.dark);
      expect(last.bound.lastDay).toBeGreaterThanOrEqual(floor.lastDay);
      expect(last.bound.ascents).toBeGreaterThanOrEqual(floor.ascents);
    },
  );
});
