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

test('as many answers are kept as asked for, from the first one on', () => {
  const asked: number[] = [];
  const square = remember({
    most: 5,
    keyOf: String,
    find: (n: number) => {
      asked.push(n);
      return n * n;
    },
  });
  for (const n of [1, 2, 3, 4, 5, 1, 2, 3, 4, 5]) square(n);
  expect(asked).toEqual([1, 2, 3, 4, 5]);
});
