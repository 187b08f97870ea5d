import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { teeNotAllowedHere } from './tee-not-allowed-here.ts';

test('tees at places that allow them pass', () => {
  expect(findingsOf(teeNotAllowedHere)).toEqual([]);
});

test('a tee in the weather is a fault at that place', () => {
  const walk = [{ place: 'stern-rail', tees: ['gnss.n2k'] }];
  expect(findingsOf(teeNotAllowedHere, { bus: { walk } })).toMatchObject([
    { level: 'fault', about: ['nav', 'stern-rail'] },
  ]);
});

test('a trunk that only passes such a place is no fault', () => {
  expect(findingsOf(teeNotAllowedHere, { bus: { walk: [{ place: 'stern-rail', tees: [] }] } })).toEqual([]);
});
