import { expect, test } from 'vitest';
import { rememberFor } from './remember-for.ts';

test('what was found for one object is not found again for it, and never given for its equal', () => {
  let found = 0;
  const sum = rememberFor({
    most: 2,
    keyOf: String,
    find: ({ base }: { readonly base: number }, more: number) => {
      found += 1;
      return base + more;
    },
  });
  const [one, equal] = [{ base: 1 }, { base: 1 }];
  expect([sum(one, 1), sum(one, 2), sum(one, 1)]).toEqual([2, 3, 2]);
  expect(found).toBe(2);
  expect(sum(equal, 1)).toBe(2);
  expect(found).toBe(3);
});

test('the longest unused answer goes first', () => {
  const asked: number[] = [];
  const same = rememberFor({
    most: 2,
    keyOf: String,
    find: (_: object, n: number) => {
      asked.push(n);
      return n;
    },
  });
  const of = {};
  for (const n of [1, 2, 1, 3, 1, 2]) same(of, n);
  expect(asked).toEqual([1, 2, 3, 2]);
});
