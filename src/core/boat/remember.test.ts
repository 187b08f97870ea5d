import { expect, test } from 'vitest';
import { remember } from './remember.ts';

test('an answer is found once while it is among the latest, and again after that', () => {
  const asked: number[] = [];
  const square = remember({
    most: 2,
    keyOf: String,
    find: (n: number) => {
      asked.push(n);
      return n * n;
    },
  });
  expect([2, 3, 2, 4, 2, 3].map(square)).toEqual([4, 9, 4, 16, 4, 9]);
  expect(asked).toEqual([2, 3, 4, 3]);
});
