import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hashOf, type Route, routeOf, stepIds } from './route.ts';

test('an address names a boat and a step of the job', () => {
  expect(routeOf('#/boat/gannet')).toEqual({ page: 'boat', id: 'gannet', step: 'lines' });
  expect(routeOf('#/boat/gannet/needs')).toEqual({ page: 'boat', id: 'gannet', step: 'needs' });
});

test('an address that is not understood leads to the list of boats', () => {
  for (const hash of ['', '#', '#/', '#/boat', '#/boat/../../etc', '#/boat/%2e%2e', '#/else/gannet']) {
    expect(routeOf(hash)).toEqual({ page: 'boats' });
  }
});

test('every place in the app can be bookmarked', () => {
  const step = fc.constantFrom(...stepIds);
  const route: fc.Arbitrary<Route> = fc.oneof(
    fc.constant<Route>({ page: 'boats' }),
    step.map((one): Route => ({ page: 'file', step: one })),
    fc
      .tuple(fc.stringMatching(/^[a-z][a-z0-9-]{0,20}$/), step)
      .map(([id, one]): Route => ({ page: 'boat', id, step: one })),
  );
  fc.assert(
    fc.property(route, (one) => {
      expect(routeOf(hashOf(one))).toEqual(one);
    }),
    { seed: 2, numRuns: 100 },
  );
});
