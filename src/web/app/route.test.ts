import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atStep, hashOf, isSameBoat, type Route, routeOf, stepIds } from './route.ts';

test('an address names a boat and a step of the job', () => {
  expect(routeOf('#/boat/gannet')).toEqual({ page: 'boat', id: 'gannet', step: 'lines' });
  expect(routeOf('#/boat/gannet/needs')).toEqual({ page: 'boat', id: 'gannet', step: 'needs' });
});

test('an address that is not understood leads to the list of boats', () => {
  for (const hash of [
    '',
    '#',
    '#/',
    '#/boat',
    '#/boat/../../etc',
    '#/boat/%2e%2e',
    '#/boat/a%2fb',
    '#/boat/%E0%A4%A',
    '#/else/gannet',
  ]) {
    expect(routeOf(hash)).toEqual({ page: 'boats' });
  }
});

test('every place in the app can be bookmarked', () => {
  const step = fc.constantFrom(...stepIds);
  const route: fc.Arbitrary<Route> = fc.oneof(
    fc.constant<Route>({ page: 'boats' }),
    step.map((one): Route => ({ page: 'file', step: one })),
    fc
      .tuple(fc.constantFrom('gannet', 'my boat', 'tern.v2', 'Möwe', '50 %'), step)
      .map(([id, one]): Route => ({ page: 'boat', id, step: one })),
  );
  fc.assert(
    fc.property(route, (one) => {
      expect(routeOf(hashOf(one))).toEqual(one);
    }),
    { seed: 2, numRuns: 100 },
  );
});

test('the code on a label names a cable of a boat, at the lines of her; a step leaves it behind', () => {
  const route = { page: 'boat', id: 'my boat', step: 'lines', cable: 'C07' } as const;
  expect(routeOf('#/boat/my%20boat/cable/C07')).toEqual(route);
  expect(hashOf(route)).toBe('#/boat/my%20boat/cable/C07');
  expect(hashOf(atStep(route, 'needs'))).toBe('#/boat/my%20boat/needs');
  expect(hashOf(atStep({ page: 'file', step: 'kit' }, 'needs'))).toBe('#/file/needs');
  expect(routeOf('#/boat/gannet/cable/c%2f7')).toEqual({ page: 'boat', id: 'gannet', step: 'lines' });
});

test('another step of the same boat is no other boat', () => {
  expect(isSameBoat(routeOf('#/boat/gannet'), routeOf('#/boat/gannet/needs'))).toBe(true);
  expect(isSameBoat(routeOf('#/file'), routeOf('#/file/kit'))).toBe(true);
  expect(isSameBoat(routeOf('#/boat/gannet'), routeOf('#/boat/wreck'))).toBe(false);
  expect(isSameBoat(routeOf('#/file'), routeOf('#/'))).toBe(false);
});
