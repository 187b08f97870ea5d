import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { cheapestJoins, type JoinsAsk } from './cheapest-joins.ts';

const count = 6;
const needs = 3;
const keys = ['a', 'b'];

/** Facts 0 to 5 are the joins, 6 to 10 follow from joins and facts before them; needs hang on the last three. */
const facts = 11;
const steps = fc
  .array(
    fc.record({
      from: fc.uniqueArray(fc.nat(facts - 2), { minLength: 0, maxLength: 3 }),
      to: fc.integer({ min: count, max: facts - 1 }),
    }),
    { minLength: 4, maxLength: 10 },
  )
  .map((list) => list.filter(({ from }) => from.length > 0 || list.length > 8));

interface Drawn {
  readonly ask: JoinsAsk;
  readonly never: readonly (readonly number[])[];
}

const asks: fc.Arbitrary<Drawn> = fc
  .record({
    steps,
    joins: fc.array(
      fc.record({
        cost: fc.nat(60),
        on: fc.uniqueArray(fc.nat(1), { maxLength: 2 }),
        takes: fc.uniqueArray(fc.constantFrom(...keys), { maxLength: 2 }),
      }),
      { minLength: count, maxLength: count },
    ),
    units: fc.array(fc.nat(80), { minLength: 2, maxLength: 2 }),
    room: fc.uniqueArray(fc.tuple(fc.constantFrom(...keys), fc.nat(3)), { selector: ([key]) => key, maxLength: 2 }),
    needs: fc.array(fc.record({ worth: fc.integer({ min: 1, max: 150 }), must: fc.boolean() }), {
      minLength: needs,
      maxLength: needs,
    }),
    never: fc.array(fc.uniqueArray(fc.nat(count - 1), { minLength: 1, maxLength: 3 }), { maxLength: 2 }),
  })
  .map(({ never, ...own }) => ({
    never,
    ask: {
      derivations: { joins: count, facts, steps: own.steps, met: [facts - 3, facts - 2, facts - 1] },
      joins: own.joins,
      units: own.units,
      room: new Map(own.room),
      // one that must be met is worth more than all there is to buy
      worth: own.needs.map(({ worth, must }) => (must ? 10_000 : worth)),
      must: own.needs.map(({ must }) => must),
      clashes: (chosen) => never.filter((list) => list.every((join) => chosen.includes(join))),
      budget: {
        rounds: 200,
        // too little to prove anything by, so that what is returned has to be proven by the full effort
        quick: { branches: 1, firstSteps: 2, steps: 1 },
        full: { branches: 2000, firstSteps: 50, steps: 5 },
      },
    },
  }));

/** What follows from some joins, by going round all steps until nothing is added. */
const followed = ({ derivations }: JoinsAsk, chosen: readonly number[]): ReadonlySet<number> => {
  const held = new Set(chosen);
  for (let before = -1; before < held.size; ) {
    before = held.size;
    for (const { from, to } of derivations.steps) if (from.every((fact) => held.has(fact))) held.add(to);
  }
  return held;
};

const unmetBy = (ask: JoinsAsk, chosen: readonly number[]): number[] => {
  const held = followed(ask, chosen);
  return ask.derivations.met.flatMap((fact, need) => (held.has(fact) ? [] : [need]));
};

const holds = ({ ask, never }: Drawn, chosen: readonly number[]): boolean =>
  !never.some((list) => list.every((join) => chosen.includes(join))) &&
  [...ask.room].every(([key, most]) => chosen.filter((join) => ask.joins[join]?.takes.includes(key)).length <= most);

/** Each join with the hundredth that lets fewer joins win, each unit once, and what is unmet at its worth. */
const costOf = (ask: JoinsAsk, chosen: readonly number[]): number => {
  const on = new Set(chosen.flatMap((join) => ask.joins[join]?.on ?? []));
  const sum = (list: readonly (number | undefined)[]): number => list.reduce<number>((all, one) => all + (one ?? 0), 0);
  return (
    sum(chosen.map((join) => ask.joins[join]?.cost)) +
    chosen.length +
    sum([...on].map((unit) => ask.units[unit])) +
    sum(unmetBy(ask, chosen).map((need) => ask.worth[need]))
  );
};

const everyChoice = [...Array(2 ** count).keys()].map((bits) =>
  [...Array(count).keys()].filter((join) => ((bits >> join) & 1) === 1),
);

const byAll = (drawn: Drawn): number =>
  Math.min(...everyChoice.filter((chosen) => holds(drawn, chosen)).map((chosen) => costOf(drawn.ask, chosen)));

test('the joins chosen cost what the cheapest of all sets of joins costs, hold, and say what they leave unmet', () => {
  fc.assert(
    fc.property(asks, (drawn) => {
      const { chosen, unmet, cost, bound } = cheapestJoins(drawn.ask);
      expect(cost).toBe(byAll(drawn));
      expect(bound).toBe(cost);
      expect(holds(drawn, chosen)).toBe(true);
      expect(unmet).toEqual(unmetBy(drawn.ask, chosen));
      expect(costOf(drawn.ask, chosen)).toBe(cost);
    }),
    { numRuns: 150 },
  );
});

test('stopped after any number of rounds the joins hold, cost what is said, and no bound is above the cheapest', () => {
  fc.assert(
    fc.property(asks, fc.integer({ min: 1, max: 4 }), (drawn, rounds) => {
      const least = { branches: 1, firstSteps: 2, steps: 1 };
      const ask = { ...drawn.ask, budget: { rounds, quick: least, full: least } };
      const { chosen, unmet, cost, bound } = cheapestJoins(ask);
      expect(bound).toBeLessThanOrEqual(byAll(drawn));
      expect(holds(drawn, chosen)).toBe(true);
      expect(unmet).toEqual(unmetBy(ask, chosen));
      expect(costOf(ask, chosen)).toBe(cost);
    }),
    { numRuns: 150 },
  );
});
