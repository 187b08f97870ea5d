import { expect, test } from 'vitest';
import { keptFor } from './kept-for.ts';

test('an answer is found once for one object, nothing is an answer too, and its equal has its own', () => {
  const asked: object[] = [];
  const first = keptFor((list: readonly number[]) => {
    asked.push(list);
    return list[0];
  });
  const [one, equal, empty] = [[1], [1], []];
  expect([one, one, equal, empty, empty].map(first)).toEqual([1, 1, 1, undefined, undefined]);
  expect(asked).toEqual([one, equal, empty]);
});
