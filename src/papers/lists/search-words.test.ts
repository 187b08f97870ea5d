import { expect, test } from 'vitest';
import type { Layout } from '../../core/backbone/problem.ts';
import { searchWords } from './search-words.ts';

const boat = { buses: [{ id: 'nav', name: 'Navigation bus', protocol: 'nmea2000' as const }] };
const layout: Layout = {
  problem: 'h',
  grade: 'mid',
  walk: [],
  cost: 57_163_000,
  bound: 50_000_000,
  status: 'gap',
  work: 9,
};

test('a search says which bus it is at, and nothing of prices before it has a layout', () => {
  expect(searchWords({ boat, problem: { bus: 'nav' }, turn: 1, of: 1 })).toEqual({
    says: 'Looking for the cheapest way to lay Navigation bus.',
  });
  expect(searchWords({ boat, problem: { bus: 'nav' }, turn: 2, of: 3 }).says).toBe(
    'Looking for the cheapest way to lay Navigation bus (2 of 3).',
  );
});

test('a search says the price it has and the price that nothing can be under', () => {
  expect(searchWords({ boat, problem: { bus: 'nav' }, turn: 1, of: 1, layout }).found).toBe(
    '571.63 EUR so far; none can be under 500.00 EUR.',
  );
});

test('a layout that breaks a limit is no price to go by', () => {
  const broken: Layout = { ...layout, status: 'infeasible' };
  expect(searchWords({ boat, problem: { bus: 'nav' }, turn: 1, of: 1, layout: broken }).found).toBeUndefined();
});
