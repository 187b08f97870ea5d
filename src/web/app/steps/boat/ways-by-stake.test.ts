import { expect, test } from 'vitest';
import { boatFromPattern } from '../../../../core/starting/boat-from-pattern.ts';
import { byStake, stakesOf } from './ways-by-stake.ts';

const { ways } = boatFromPattern({ pattern: 'sloop-keel-stepped', name: 'Tern' });

test('what most of the order hangs on is taped first, the rest stays in its order', () => {
  const ids = ways.map(({ id }) => id);
  const [first = '', second = '', third = ''] = ids;
  const tape = [
    { id: 'a', does: 'tape', about: third, lines: [], how: ['tape-it'], atStake: 500 } as const,
    { id: 'b', does: 'prove', about: second, lines: [], how: ['pull-a-messenger'], atStake: 900 } as const,
    { id: 'c', does: 'tape', about: second, lines: [], how: ['tape-it'], atStake: 200 } as const,
  ].map((entry) => ({ ...entry, lines: [], how: [...entry.how] }));
  const stakes = stakesOf({ tape });
  expect(stakes).toEqual(
    new Map([
      [third, 500],
      [second, 900],
    ]),
  );
  expect(byStake(ways, stakes).map(({ id }) => id)).toEqual([second, third, first, ...ids.slice(3)]);
  expect(byStake(ways, new Map())).toEqual(ways);
});
