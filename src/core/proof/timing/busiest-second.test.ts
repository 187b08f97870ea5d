import { expect, test } from 'vitest';
import { startSeconds } from './busiest-second.ts';

const feed = (times: readonly (readonly [elapsedS: number, exactBits: number])[]) => {
  const seconds = startSeconds();
  for (const [elapsedS, exactBits] of times) seconds.add({ elapsedUs: elapsedS * 1e6, exactBits, worstBits: 160 });
  return seconds.busiest();
};

test('seconds are counted from the first frame and the fullest is kept', () => {
  expect(
    feed([
      [0, 130],
      [0.99, 131],
      [1, 140],
      [500.1, 130],
      [500.2, 135],
    ]),
  ).toEqual({
    second: 500,
    frames: 2,
    exactBits: 265,
    worstBits: 320,
  });
});

test('of two equal seconds the earlier is the busiest', () => {
  expect(
    feed([
      [3, 140],
      [200, 140],
    ])?.second,
  ).toBe(3);
});

test('a frame that comes a second late still counts in its own second', () => {
  expect(
    feed([
      [0.5, 140],
      [1.5, 130],
      [0.9, 140],
    ]),
  ).toMatchObject({ second: 0, frames: 2 });
});

test('no frames, no busiest second', () => {
  expect(feed([])).toBeUndefined();
});
