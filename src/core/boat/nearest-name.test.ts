import { expect, test } from 'vitest';
import { nearestName } from './nearest-name.ts';

test.each([
  ['lenght', ['length', 'len', 'width'], 'length'],
  ['Length', ['length'], 'length'],
  ['hlem', ['helm', 'hull'], 'helm'],
  ['stay', ['stays', 'goes', 'comes'], 'stays'],
  ['mast', ['must', 'most'], 'most'],
  ['colour', ['length', 'tees'], undefined],
  ['x', ['y'], 'y'],
  ['ab', ['yz'], undefined],
])('%s is taken for the nearest of the names known, if one is near', (given, known, expected) => {
  expect(nearestName(given, known)).toBe(expected);
});
