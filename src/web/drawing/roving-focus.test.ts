import { expect, test } from 'vitest';
import { nextInRow } from './roving-focus.ts';

test('the arrow keys go from balloon to balloon and round the end', () => {
  expect(nextInRow({ key: 'ArrowRight', at: 2, count: 3 })).toBe(0);
  expect(nextInRow({ key: 'ArrowLeft', at: 0, count: 3 })).toBe(2);
  expect(nextInRow({ key: 'End', at: 0, count: 3 })).toBe(2);
  expect(nextInRow({ key: 'Home', at: 2, count: 3 })).toBe(0);
});

test('any other key, and a drawing without balloons, is left alone', () => {
  expect(nextInRow({ key: 'a', at: 0, count: 3 })).toBeUndefined();
  expect(nextInRow({ key: 'ArrowRight', at: 0, count: 0 })).toBeUndefined();
});
