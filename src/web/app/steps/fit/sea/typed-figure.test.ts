import { expect, test } from 'vitest';
import { amountOf, figureOf, secondsOf } from './typed-figure.ts';

test('a figure is read with a comma, a point or a minus of print, and nothing is guessed', () => {
  expect(figureOf('−1,35')).toBe(-1.35);
  expect(figureOf(' 12 ')).toBe(12);
  expect(figureOf('12 kn')).toBeUndefined();
  expect(amountOf('0')).toBeUndefined();
});

test('a time is minutes and seconds, or seconds', () => {
  expect(secondsOf('7:30')).toBe(450);
  expect(secondsOf('450')).toBe(450);
  expect(secondsOf('0:00')).toBeUndefined();
  expect(secondsOf('7:75')).toBeUndefined();
});
