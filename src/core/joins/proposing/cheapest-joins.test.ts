import { expect, test } from 'vitest';
import { cheapestJoins, type JoinsAsk } from './cheapest-joins.ts';

/** Two needs: the first by join 0 or 1, the second by join 2 behind either of them. Facts 0 to 2 are the joins. */
const ask: JoinsAsk = {
  derivations: {
    joins: 3,
    facts: 6,
    steps: [
      { from: [0], to: 3 },
      { from: [1], to: 3 },
      { from: [3, 2], to: 4 },
    ],
    met: [3, 4],
  },
  joins: [
    { cost: 50, on: [], takes: ['a'] },
    { cost: 20, on: [], takes: ['a'] },
    { cost: 30, on: [], takes: ['b'] },
  ],
  units: [],
  room: new Map(),
  worth: [1_000_000, 1_000_000],
  must: [true, true],
  clashes: () => [],
  budget: {
    rounds: 20,
    quick: { branches: 10, firstSteps: 50, steps: 5 },
    full: { branches: 100, firstSteps: 50, steps: 5 },
  },
};

test('the cheapest joins that meet every need are chosen, and proved', () => {
  expect(cheapestJoins(ask)).toMatchObject({ chosen: [1, 2], unmet: [], cost: 52, bound: 52 });
});

test('joins that may not stand together are gone round', () => {
  const clashes = (chosen: readonly number[]): (readonly number[])[] =>
    chosen.includes(1) && chosen.includes(2) ? [[1, 2]] : [];
  expect(cheapestJoins({ ...ask, clashes })).toMatchObject({ chosen: [0, 2], cost: 82, bound: 82 });
});

test('what is worth less than its joins is left unmet', () => {
  const nice = { ...ask, worth: [1_000_000, 10], must: [true, false] };
  expect(cheapestJoins(nice)).toMatchObject({ chosen: [1], unmet: [1], cost: 31, bound: 31 });
});

test('when the work is spent the answer says what it leaves unmet, and is not called the cheapest', () => {
  const clashes = (chosen: readonly number[]): (readonly number[])[] => (chosen.length > 1 ? [chosen] : []);
  const stopped = cheapestJoins({ ...ask, clashes, budget: { ...ask.budget, rounds: 1 } });
  // of the two that clash the first is left out, and both needs hang on it
  expect(stopped).toMatchObject({ chosen: [2], unmet: [0, 1], cost: 31 + 2 * 1_000_000, bound: 52 });
  expect(stopped.work).toBeGreaterThan(0);
  expect(stopped.bound).toBeLessThan(stopped.cost);
});
