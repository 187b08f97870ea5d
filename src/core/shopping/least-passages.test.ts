import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastPassages, type PassageDoes, type StuckLine } from './least-passages.ts';

const holes = (costs: Readonly<Record<string, number>>): ReadonlyMap<string, number> => new Map(Object.entries(costs));

test('one hole at 75.00 is cheaper than three plugs at 26.00, and dearer than two', () => {
  const line = (id: string): StuckLine => ({ id, ways: ['gland'], fitPlug: 2600 });
  const doesFor = (...ids: string[]): PassageDoes[] => [
    ...leastPassages(ids.map(line), holes({ gland: 7500 })).values(),
  ];
  expect(doesFor('a', 'b')).toEqual(['fit-plug', 'fit-plug']);
  expect(doesFor('a', 'b', 'c')).toEqual(['wider-hole', 'wider-hole', 'wider-hole']);
});

test('a line before two holes needs both wide, or one plug', () => {
  const does = (fitPlug: number): PassageDoes | undefined =>
    leastPassages([{ id: 'a', ways: ['deck', 'step'], fitPlug }], holes({ deck: 7500, step: 7500 })).get('a');
  expect([does(14_000), does(16_000)]).toEqual(['fit-plug', 'wider-hole']);
});

test('of equal cost no hole is bored; where nothing can be done nothing is said', () => {
  const lines: StuckLine[] = [
    { id: 'a', ways: ['gland'], otherWay: 7500 },
    { id: 'b', ways: ['bulkhead'] },
  ];
  expect([...leastPassages(lines, holes({ gland: 7500 }))]).toEqual([['a', 'other-way']]);
});

/** The least cost, found by trying every choice of every line, each hole that is chosen paid for once. */
const leastByTrying = (lines: readonly StuckLine[], costs: ReadonlyMap<string, number>): number => {
  const search = (at: number, wide: ReadonlySet<string>, cost: number): number => {
    const line = lines[at];
    if (line === undefined) return cost + [...wide].reduce((sum, way) => sum + (costs.get(way) ?? 0), 0);
    const tries = [
      ...(line.fitPlug === undefined ? [] : [search(at + 1, wide, cost + line.fitPlug)]),
      ...(line.otherWay === undefined ? [] : [search(at + 1, wide, cost + line.otherWay)]),
      ...(line.ways.every((way) => costs.has(way)) ? [search(at + 1, new Set([...wide, ...line.ways]), cost)] : []),
    ];
    return Math.min(...tries);
  };
  return search(0, new Set(), 0);
};

test('nothing that could be done costs less than what is chosen', () => {
  const price = fc.integer({ min: 0, max: 12 });
  const ways = ['w0', 'w1', 'w2', 'w3'];
  const aLine = fc.record({
    ways: fc.subarray(ways, { minLength: 1 }),
    fitPlug: fc.option(price, { nil: undefined }),
    otherWay: fc.option(price, { nil: undefined }),
  });
  fc.assert(
    fc.property(
      fc.array(aLine, { maxLength: 5 }),
      fc.array(fc.option(price, { nil: undefined }), { minLength: 4, maxLength: 4 }),
      (drawn, prices) => {
        const lines = drawn.map(
          ({ ways: own, fitPlug, otherWay }, n): StuckLine => ({
            id: `line-${n}`,
            ways: own,
            ...(fitPlug === undefined ? {} : { fitPlug }),
            ...(otherWay === undefined ? {} : { otherWay }),
          }),
        );
        const costs = new Map<string, number>(
          prices.flatMap((cost, n) => (cost === undefined ? [] : [[`w${n}`, cost]])),
        );
        const does = leastPassages(lines, costs);
        const helped = lines.filter(({ id }) => does.has(id));
        const wide = new Set(helped.filter(({ id }) => does.get(id) === 'wider-hole').flatMap((line) => line.ways));
        const spent = helped.reduce(
          (sum, { id, fitPlug = 0, otherWay = 0 }) =>
            sum + (does.get(id) === 'fit-plug' ? fitPlug : does.get(id) === 'other-way' ? otherWay : 0),
          [...wide].reduce((sum, way) => sum + (costs.get(way) ?? 0), 0),
        );
        expect(spent).toBe(leastByTrying(helped, costs));
        for (const { id, fitPlug, otherWay, ways: own } of lines) {
          const canHelp = fitPlug !== undefined || otherWay !== undefined || own.every((way) => costs.has(way));
          expect(does.has(id)).toBe(canHelp);
        }
      },
    ),
  );
});
