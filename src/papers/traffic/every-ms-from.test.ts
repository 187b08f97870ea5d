import { expect, test } from 'vitest';
import { everyMsFrom } from './every-ms-from.ts';

test('an interval is read in ms or in s, with a point or a comma', () => {
  expect(['250', ' 250 ms', '0,5 s', '2.5s', '86400 s'].map(everyMsFrom)).toEqual([250, 250, 500, 2500, 86_400_000]);
});

test('what is no interval of a day or less is none', () => {
  expect(['', '0', '-5', 'often', '10 Hz', '86401 s', '1e3'].map(everyMsFrom)).toEqual(Array(7).fill(undefined));
});
