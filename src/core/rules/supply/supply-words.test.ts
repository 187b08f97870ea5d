import { expect, test } from 'vitest';
import { aFew, amperes, millimetres, someNames } from './supply-words.ts';

test('of many names three are said and how many more, of four all', () => {
  expect([['a'], ['a', 'b'], ['a', 'b', 'c', 'd'], ['a', 'b', 'c', 'd', 'e', 'f']].map(someNames)).toEqual([
    'a',
    'a and b',
    'a, b, c and d',
    'a, b, c and 3 more',
  ]);
  expect(aFew(['a', 'b', 'a', 'c', 'd'])).toEqual(['a', 'b', 'c']);
});

test('amperes are said in tenths below a hundred, lengths in metres from one metre on', () => {
  expect([9.96, 12.34, 99.94, 100, 1234.5].map(amperes)).toEqual(['10 A', '12.3 A', '99.9 A', '100 A', '1235 A']);
  expect([0.4, 999.4, 1000, 1829].map(millimetres)).toEqual(['0 mm', '999 mm', '1.00 m', '1.83 m']);
});
