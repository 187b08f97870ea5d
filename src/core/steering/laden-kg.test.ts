import { expect, test } from 'vitest';
import { ladenKg } from './laden-kg.ts';

test('memory-laden-share: a boat of 5000 kg light weighs 6000 kg laden', () => {
  expect(ladenKg({ displacement: { valueKg: 5000, of: 'light' } })).toBeCloseTo(6000, 6);
});

test('a weight entered laden stands, and one that nobody entered is not guessed', () => {
  expect(ladenKg({ displacement: { valueKg: 5000, of: 'laden' } })).toBe(5000);
  expect(ladenKg({})).toBeUndefined();
});
