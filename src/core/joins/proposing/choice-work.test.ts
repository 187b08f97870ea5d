import { expect, test } from 'vitest';
import { type Choice, cheapestChoice } from './cheapest-choice.ts';

/** Numbers below a limit that look drawn by lot and are the same in every run. */
const drawFrom = (seed: number): ((below: number) => number) => {
  let state = Math.imul(seed + 1, 0x9e3779b1) >>> 0;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return (state >>> 8) % below;
  };
};

/** A choice of forty items on six bases, with limits and sets that may not stand together. */
const bigChoice = (seed: number): Choice => {
  const draw = drawFrom(seed);
  const count = 40;
  const listOf = (least: number, more: number): number[] => [
    ...new Set(Array.from({ length: least + draw(more) }, () => draw(count))),
  ];
  const many = <Entry>(length: number, make: () => Entry): Entry[] => Array.from({ length }, make);
  return {
    items: many(count, () => ({ cost: 1 + draw(5000), on: draw(3) === 0 ? [] : [draw(6)] })),
    bases: many(6, () => 100 + draw(20_000)),
    wanted: many(18, () => listOf(3, 8)),
    limits: many(6, () => ({ of: listOf(3, 5), most: 1 + draw(2) })),
    never: many(4, () => listOf(2, 2)),
  };
};

/** What each choice costs at least, by a general solver of integer programmes. */
const leastCosts = [
  24_132, 16_095, 14_706, 20_174, 22_413, 15_383, 24_822, 36_054, 13_672, 16_629, 25_917, 15_712, 41_614, 16_805,
  20_865, 28_875,
];

/** The most branches that all proofs together may take: more would be found by a weaker bound, or without what it settles. */
const mostBranches = 516;

test('choices of forty items are proven in no more branches than they were, at what another solver found', () => {
  const effort = { branches: 400, firstSteps: 400, steps: 20 };
  const found = leastCosts.map((_, seed) => cheapestChoice(bigChoice(seed), effort));
  expect(found.map((one) => one?.cost)).toEqual(leastCosts);
  expect(found.map((one) => one?.bound)).toEqual(leastCosts);
  const branches = found.reduce((sum, one) => sum + (one?.work ?? 0), 0);
  expect(branches).toBeLessThanOrEqual(mostBranches);
  expect(branches).toBeGreaterThanOrEqual(found.length);
});
