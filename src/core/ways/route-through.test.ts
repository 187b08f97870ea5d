import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import { routeThrough } from './route-through.ts';
import { makeRouter } from './routes.ts';

const index = indexBoat(aBoat().boat);
const router = makeRouter(index);
const asked = { index, router, kind: 'pair', from: 'locker', to: 'helm' } as const;

test('a pair led through the mast goes there and on, and through the conduit it goes straight', () => {
  expect(routeThrough({ ...asked, through: { place: 'mast-base' } })?.ways).toEqual(['locker-mast', 'helm-mast']);
  expect(routeThrough({ ...asked, through: { way: 'helm-mast' } })?.ways).toEqual(['locker-mast', 'helm-mast']);
  expect(routeThrough({ ...asked, through: { way: 'locker-helm' } })?.ways).toEqual(['locker-helm']);
});

test('through one of its own ends a line goes as it would anyway', () => {
  const anyway = router.cheapest(asked);
  expect(routeThrough({ ...asked, through: { place: 'locker' } })).toEqual(anyway);
  expect(routeThrough({ ...asked, through: { place: 'helm' } })).toEqual(anyway);
});

test('a way that does not allow the kind is still walked where a person leads the line through it, and never else', () => {
  const ways = index.boat.ways.map((way) => (way.id === 'helm-mast' ? { ...way, allows: ['coax' as const] } : way));
  const shut = indexBoat({ ...index.boat, ways });
  const own = { ...asked, index: shut, router: makeRouter(shut) };
  expect(routeThrough({ ...own, through: { way: 'helm-mast' } })?.ways).toEqual(['locker-mast', 'helm-mast']);
  expect(routeThrough({ ...own, through: { place: 'mast-base' } })?.ways).not.toContain('helm-mast');
});

test('what is not aboard leads nowhere', () => {
  expect(routeThrough({ ...asked, through: { place: 'no-such-place' } })).toBeUndefined();
  expect(routeThrough({ ...asked, through: { way: 'no-such-way' } })).toBeUndefined();
});

test('a route through anything hangs together, holds it, and is never shorter than the shortest', () => {
  const places = index.boat.places.map(({ id }) => id);
  const through = fc.oneof(
    fc.constantFrom(...places).map((place) => ({ place })),
    fc.constantFrom(...index.boat.ways.map(({ id }) => id)).map((way) => ({ way })),
  );
  fc.assert(
    fc.property(fc.constantFrom(...places), fc.constantFrom(...places), through, (from, to, by) => {
      const route = routeThrough({ ...asked, from, to, through: by });
      if (route === undefined) return;
      expect(router.along({ from, ways: route.ways })).toEqual(route);
      expect(route.places.at(-1)).toBe(to);
      expect('place' in by ? route.places : route.ways).toContain('place' in by ? by.place : by.way);
      expect(route.mm).toBeGreaterThanOrEqual(
        router.between({ kind: 'pair', from, to })?.mm ?? Number.POSITIVE_INFINITY,
      );
    }),
  );
});
