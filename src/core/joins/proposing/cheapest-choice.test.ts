import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Choice, cheapestChoice, type Effort } from './cheapest-choice.ts';

const holds = ({ wanted, limits, never }: Choice, chosen: ReadonlySet<number>): boolean =>
  wanted.every((list) => list.some((item) => chosen.has(item))) &&
  limits.every(({ of, most }) => of.filter((item) => chosen.has(item)).length <= most) &&
  never.every((list) => !list.every((item) => chosen.has(item)));

const costOf = ({ items, bases }: Choice, chosen: readonly number[]): number => {
  const on = new Set(chosen.flatMap((item) => items[item]?.on ?? []));
  return (
    chosen.reduce((sum, item) => sum + (items[item]?.cost ?? 0), 0) +
    [...on].reduce((sum, base) => sum + (bases[base] ?? 0), 0)
  );
};

/** By looking at every choice there is. */
const byAll = (choice: Choice): number | undefined => {
  let least: number | undefined;
  for (let bits = 0; bits < 2 ** choice.items.length; bits += 1) {
    const chosen = choice.items.flatMap((_, item) => ((bits >> item) & 1 ? [item] : []));
    const cost = costOf(choice, chosen);
    if ((least === undefined || cost < least) && holds(choice, new Set(chosen))) least = cost;
  }
  return least;
};

const effort = (branches: number): Effort => ({ branches, firstSteps: 200, steps: 20 });

const item = fc.nat(9);
const lists = (minLength: number, maxLength: number) =>
  fc.array(fc.uniqueArray(item, { minLength, maxLength: 4 }), { maxLength });
const choices: fc.Arbitrary<Choice> = fc.record({
  items: fc.array(fc.record({ cost: fc.nat(20), on: fc.uniqueArray(fc.nat(2), { maxLength: 2 }) }), {
    minLength: 10,
    maxLength: 10,
  }),
  bases: fc.array(fc.nat(30), { minLength: 3, maxLength: 3 }),
  wanted: lists(1, 7),
  limits: fc.array(fc.record({ of: fc.uniqueArray(item, { minLength: 1, maxLength: 5 }), most: fc.nat(3) }), {
    maxLength: 3,
  }),
  never: lists(1, 3),
});

/** The same with costs so alike that a bound is often met to the hundredth. */
const alike = choices.map((choice) => ({
  ...choice,
  items: choice.items.map(({ cost, on }) => ({ cost: cost % 4, on })),
  bases: choice.bases.map((cost) => cost % 5),
}));

describe('the cheapest choice', () => {
  it('costs what the cheapest of all choices costs, and holds', () => {
    fc.assert(
      fc.property(fc.oneof(choices, alike), (choice) => {
        const found = cheapestChoice(choice, effort(100_000));
        expect(found?.cost).toBe(byAll(choice));
        if (found === undefined) return;
        expect(found.bound).toBe(found.cost);
        expect(holds(choice, new Set(found.chosen))).toBe(true);
        expect(costOf(choice, found.chosen)).toBe(found.cost);
      }),
      { numRuns: 400 },
    );
  });

  it('never names a bound above what there is, however soon it has to stop', () => {
    fc.assert(
      fc.property(choices, fc.integer({ min: 1, max: 6 }), (choice, most) => {
        const found = cheapestChoice(choice, effort(most));
        if (found === undefined) return;
        const least = byAll(choice) ?? Number.POSITIVE_INFINITY;
        expect(found.bound).toBeLessThanOrEqual(least);
        expect(found.cost).toBeGreaterThanOrEqual(least);
      }),
      { numRuns: 200 },
    );
  });

  it('pays once for what several items hang on', () => {
    const items = [
      { cost: 1, on: [0] },
      { cost: 1, on: [0] },
      { cost: 8, on: [] },
      { cost: 8, on: [] },
    ];
    const choice = {
      items,
      bases: [10],
      wanted: [
        [0, 2],
        [1, 3],
      ],
      limits: [],
      never: [],
    };
    expect(cheapestChoice(choice, effort(100))).toMatchObject({ chosen: [0, 1], cost: 12, bound: 12 });
  });

  it('looks at what costs just one less than the best known, where the bound is met to the hundredth', () => {
    const choice: Choice = {
      items: [
        { cost: 1, on: [1] },
        { cost: 2, on: [0] },
        { cost: 1, on: [1] },
        { cost: 0, on: [1] },
        { cost: 1, on: [0, 1] },
        { cost: 3, on: [0, 1] },
        { cost: 0, on: [] },
        { cost: 3, on: [0] },
      ],
      bases: [0, 3],
      wanted: [[6], [1], [5, 2], [5, 0, 7], [3, 2]],
      limits: [{ of: [2, 4], most: 1 }],
      never: [],
    };
    expect(byAll(choice)).toBe(7);
    expect(cheapestChoice(choice, { branches: 5000, firstSteps: 10, steps: 1 })?.cost).toBe(7);
  });

  it('is none where what is wanted may not be', () => {
    const items = [
      { cost: 1, on: [] },
      { cost: 1, on: [] },
    ];
    const both = { items, bases: [], wanted: [[0], [1]], never: [] };
    expect(cheapestChoice({ ...both, limits: [{ of: [0, 1], most: 1 }] }, effort(100))).toBeUndefined();
    expect(cheapestChoice({ ...both, limits: [], never: [[0, 1]] }, effort(100))).toBeUndefined();
  });
});
