import { expect, test } from 'vitest';
import type { Watched } from '../../work-shape.ts';
import { watchedNow } from './watched-now.ts';

const ways = (...list: Watched['ways']): Watched => ({ function: 'depth', hard: false, ways: list });
const way = (from: readonly string[], until: readonly string[]): Watched['ways'][number] => ({
  by: ['x'],
  from: [...from],
  until: [...until],
});

test('a function is watched while the order of what is open can make it dark and give it back', () => {
  const watched = (one: Watched, open: readonly string[], done: readonly string[] = []) =>
    watchedNow({ functions: [one], open: new Set(open), done: new Map(done.map((id) => [id, '2027-03-01'])) });
  const usual = ways(way([], ['out']), way(['in', 'in', 'a'], []));
  expect(watched(usual, ['out', 'in', 'a'])).toEqual([
    {
      id: 'depth',
      hard: false,
      ways: [
        { from: ['a', 'in'], until: [] },
        { from: [], until: ['out'] },
      ],
    },
  ]);
  // What a job left out would give never comes, so no order gives it back; what never may be dark is watched all the same.
  expect(watched(usual, ['out', 'a'])).toEqual([]);
  expect(watched({ ...usual, hard: true }, ['out', 'a'])).toEqual([
    { id: 'depth', hard: true, ways: [{ from: [], until: ['out'] }] },
  ]);
  // She has not had it yet.
  expect(watched(ways(way(['in'], [])), ['in'])).toEqual([]);
  // It is there for good, beside a way that ends.
  expect(watched(ways(way([], []), way([], ['out'])), ['out'])).toEqual([]);
  // Its old way is gone, with the job that ended it.
  expect(watched(usual, ['in', 'a'], ['out'])).toEqual([
    { id: 'depth', hard: false, ways: [{ from: ['a', 'in'], until: [] }] },
  ]);
});

test('watched functions are sorted by name, their ways by text', () => {
  const functions = ['vhf', 'depth'].map(
    (id): Watched => ({ ...ways(way([], ['out']), way(['in'], [])), function: id as Watched['function'] }),
  );
  const found = watchedNow({ functions, open: new Set(['in', 'out']), done: new Map() });
  expect(found.map(({ id }) => id)).toEqual(['depth', 'vhf']);
});
