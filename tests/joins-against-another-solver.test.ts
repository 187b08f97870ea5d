import * as fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, test } from 'vitest';
import { type Choice, cheapestChoice } from '../src/core/joins/proposing/cheapest-choice.ts';

const highs = await loadHighs();

/** A choice as an integer programme in the text form of linear programmes. */
const programmeOf = ({ items, bases, wanted, limits, never }: Choice): string => {
  const sum = (list: readonly number[]): string => list.map((item) => `x${item}`).join(' + ');
  const costs = [...items.map(({ cost }, at) => `${cost} x${at}`), ...bases.map((cost, at) => `${cost} y${at}`)].join(
    ' + ',
  );
  const rows = [
    ...wanted.map((list) => `${sum(list)} >= 1`),
    ...limits.map(({ of, most }) => `${sum(of)} <= ${most}`),
    ...never.map((list) => `${sum(list)} <= ${list.length - 1}`),
    ...items.flatMap(({ on }, at) => on.map((base) => `x${at} - y${base} <= 0`)),
  ];
  const names = [...items.map((_, at) => `x${at}`), ...bases.map((_, at) => `y${at}`)].join(' ');
  return `Minimize\n obj: ${costs}\nSubject To\n${rows.map((row, at) => ` r${at}: ${row}`).join('\n')}\nBinary\n ${names}\nEnd\n`;
};

const count = { items: 60, bases: 8 } as const;
const item = fc.nat(count.items - 1);
const choices: fc.Arbitrary<Choice> = fc.record({
  items: fc.array(
    fc.record({
      cost: fc.integer({ min: 1, max: 5000 }),
      on: fc.uniqueArray(fc.nat(count.bases - 1), { maxLength: 2 }),
    }),
    { minLength: count.items, maxLength: count.items },
  ),
  bases: fc.array(fc.integer({ min: 100, max: 30_000 }), { minLength: count.bases, maxLength: count.bases }),
  wanted: fc.array(fc.uniqueArray(item, { minLength: 2, maxLength: 12 }), { minLength: 20, maxLength: 45 }),
  limits: fc.array(
    fc.record({ of: fc.uniqueArray(item, { minLength: 2, maxLength: 8 }), most: fc.integer({ min: 1, max: 3 }) }),
    { maxLength: 15 },
  ),
  never: fc.array(fc.uniqueArray(item, { minLength: 2, maxLength: 4 }), { maxLength: 6 }),
});

describe('a solver of integer programmes from elsewhere', () => {
  test('finds the same least cost for fifty choices of sixty items', () => {
    fc.assert(
      fc.property(choices, (choice) => {
        const other = highs.solve(programmeOf(choice), { mip_rel_gap: 0 });
        const own = cheapestChoice(choice, { branches: 20_000, firstSteps: 1500, steps: 30 });
        if (other.Status !== 'Optimal') {
          expect(own).toBeUndefined();
          return;
        }
        expect(own?.cost).toBe(Math.round(other.ObjectiveValue));
        expect(own?.bound).toBe(own?.cost);
      }),
      { numRuns: 50, seed: 7 },
    );
  });
});
