import { describe, expect, test } from 'vitest';
import { bruteOrder } from './brute-order.test-helper.ts';
import { checkWorkAnswer } from './check-work-answer.ts';
import { plainOrder } from './plain-order.ts';
import { refitWork } from './refit-work.test-helper.ts';
import { solveWork } from './solve-work.ts';
import { drawnWork, drawOf } from './some-work.test-helper.ts';

describe('the order of the work', () => {
  test('is as cheap as the cheapest of all orders there are, on small work drawn by lot', () => {
    let [held, stuck] = [0, 0];
    for (let seed = 0; seed < 14; seed += 1) {
      const draw = drawOf(seed);
      const problem = drawnWork(draw, { jobs: 2 + draw(3), days: 3, perDay: 3 });
      const least = bruteOrder(problem);
      const answer = [...solveWork(problem, { work: 400_000 })].at(-1);
      expect({ seed, cost: answer?.cost }).toEqual({ seed, cost: least });
      if (answer === undefined) stuck += 1;
      else {
        held += 1;
        expect({ seed, status: answer.status, broken: checkWorkAnswer(problem, answer).broken }).toEqual({
          seed,
          status: 'proven',
          broken: [],
        });
      }
    }
    expect(Math.min(held, stuck)).toBeGreaterThan(1);
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
});
