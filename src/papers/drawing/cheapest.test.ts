import fc from 'fast-check';
import { expect, test } from 'vitest';
import { byLeast, cheapest, priced } from './cheapest.ts';

const option = fc.record({
  least: fc.integer({ min: 0, max: 12 }),
  more: fc.integer({ min: 0, max: 9 }),
  beside: fc.option(fc.integer({ min: 0, max: 9 }), { nil: undefined }),
});

test('it is the one that all prices asked at once would give, and none is asked twice', () => {
  fc.assert(
    fc.property(fc.array(option, { maxLength: 30 }), (drawn) => {
      const asked: number[] = [];
      const options = drawn.map(({ least, more, beside }, at) => ({
        beside,
        ...priced({
          at,
          least,
          rest: () => {
            asked.push(at);
            return more;
          },
        }),
      }));
      const found = cheapest([...options].sort(byLeast), ({ beside }) => beside);
      expect(new Set(asked).size).toBe(asked.length);
      const [best] = drawn
        .flatMap(({ least, more, beside }, at) =>
          beside === undefined ? [] : [{ at, standing: least + more, sum: least + more + beside }],
        )
        .sort((one, other) => one.sum - other.sum || one.standing - other.standing || one.at - other.at);
      expect(found?.at).toBe(best?.at);
    }),
  );
});

test('what costs more at the least than the cheapest costs in all is not asked', () => {
  const asked: string[] = [];
  const one = (at: number, least: number, name: string) => {
    const rest = (): number => {
      asked.push(name);
      return 1;
    };
    return { name, ...priced({ at, least, rest }) };
  };
  const options = [one(0, 1, 'near'), one(1, 2, 'as dear at the least'), one(2, 3, 'far')];
  expect(cheapest(options, () => 0)?.name).toBe('near');
  expect(asked).toEqual(['near', 'as dear at the least']);
});
