import { expect, test } from 'vitest';
import { freeStateId } from './free-state-id.ts';

test('a state is named by its moment, and numbered where two fall into one', () => {
  const date = new Date(Date.UTC(2026, 2, 1, 9, 30));
  const first = freeStateId([], date);
  expect(first).toBe('2026-03-01-09-30-00-000');
  expect(freeStateId([first], date)).toBe(`${first}-2`);
  expect(freeStateId([first, `${first}-2`], date)).toBe(`${first}-3`);
});
