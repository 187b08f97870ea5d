import fc from 'fast-check';
import { expect, test } from 'vitest';
import { byCodeUnit } from '../boat/ids.ts';
import { type RouteEdge, shortestRoutes } from './shortest-route.ts';

const boat: RouteEdge[] = [
  { id: 'bilge-run', a: 'helm', b: 'locker', mm: 3000 },
  { id: 'deckhead', a: 'helm', b: 'panel', mm: 1200 },
  { id: 'panel-run', a: 'panel', b: 'locker', mm: 1500 },
];

test('the way round by the panel is taken when it is shorter than the direct one', () => {
  expect(shortestRoutes({ edges: boat, from: 'helm' }).get('locker')).toEqual({
    mm: 2700,
    edges: ['deckhead', 'panel-run'],
  });
});

test('a place reaches itself over no ways, and a place that nothing leads to is not in the answer', () => {
  const routes = shortestRoutes({ edges: [...boat, { id: 'mast-run', a: 'step', b: 'top', mm: 9000 }], from: 'helm' });
  expect(routes.get('helm')).toEqual({ mm: 0, edges: [] });
  expect(routes.has('top')).toBe(false);
});

test('of equally long routes the one over fewer ways wins, then the first by name', () => {
  const edges: RouteEdge[] = [
    { id: 'z', a: 'a', b: 'd', mm: 2 },
    { id: 'b', a: 'a', b: 'b', mm: 1 },
    { id: 'c', a: 'b', b: 'd', mm: 1 },
    { id: 'y', a: 'a', b: 'd', mm: 2 },
  ];
  expect(shortestRoutes({ edges, from: 'a' }).get('d')).toEqual({ mm: 2, edges: ['y'] });
});

test('of equally long routes the one with less doubt wins, over more ways if need be', () => {
  const edges: RouteEdge[] = [
    { id: 'guessed', a: 'a', b: 'd', mm: 2000, longestMm: 2600 },
    { id: 'taped-1', a: 'a', b: 'b', mm: 1000, longestMm: 1100 },
    { id: 'taped-2', a: 'b', b: 'd', mm: 1000, longestMm: 1100 },
  ];
  expect(shortestRoutes({ edges, from: 'a' }).get('d')?.edges).toEqual(['taped-1', 'taped-2']);
});

const edgesArbitrary = fc
  .array(fc.record({ a: fc.nat(6), b: fc.nat(6), mm: fc.nat(3) }), { maxLength: 9 })
  .map((list) => list.map(({ a, b, mm }, n): RouteEdge => ({ id: `w${n}`, a: `p${a}`, b: `p${b}`, mm })));

/** Every route without a place passed twice, told one by one. */
const everyRoute = (edges: readonly RouteEdge[], from: string): Map<string, { mm: number; edges: string[] }[]> => {
  const found = new Map<string, { mm: number; edges: string[] }[]>();
  const walk = (at: string, passed: readonly string[], mm: number, taken: readonly string[]): void => {
    found.set(at, [...(found.get(at) ?? []), { mm, edges: [...taken] }]);
    for (const edge of edges) {
      for (const [here, there] of [[edge.a, edge.b] as const, [edge.b, edge.a] as const]) {
        if (here === at && !passed.includes(there)) walk(there, [...passed, there], mm + edge.mm, [...taken, edge.id]);
      }
    }
  };
  walk(from, [from], 0, []);
  return found;
};

test('on any small boat the route is the least of all routes told one by one', () => {
  fc.assert(
    fc.property(edgesArbitrary, (edges) => {
      const best = new Map(
        [...everyRoute(edges, 'p0')].map(([to, routes]) => [
          to,
          routes.sort(
            (one, other) =>
              one.mm - other.mm ||
              one.edges.length - other.edges.length ||
              byCodeUnit(one.edges.join(), other.edges.join()),
          )[0],
        ]),
      );
      expect(new Map(shortestRoutes({ edges, from: 'p0' }))).toEqual(best);
    }),
    { numRuns: 100 },
  );
});

test('the order in which the ways are listed changes nothing', () => {
  fc.assert(
    fc.property(
      edgesArbitrary.chain((edges) =>
        fc.tuple(fc.constant(edges), fc.shuffledSubarray(edges, { minLength: edges.length })),
      ),
      ([edges, shuffled]) => {
        expect(shortestRoutes({ edges: shuffled, from: 'p0' })).toEqual(shortestRoutes({ edges, from: 'p0' }));
      },
    ),
    { numRuns: 100 },
  );
});
