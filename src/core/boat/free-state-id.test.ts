import { expect, test } from 'vitest';
import { freeStateId, stateMs } from './free-state-id.ts';

test('a state is named by its moment, and later than all others where two fall into one or a clock was set back', () => {
  const date = new Date(Date.UTC(2026, 2, 1, 9, 30));
  const first = freeStateId([], date);
  expect(first).toBe('2026-03-01-09-30-00-000');
  expect(stateMs(first)).toBe(date.getTime());
  expect(freeStateId([first], date)).toBe('2026-03-01-09-30-00-001');
  expect(freeStateId([first, '2026-03-01-09-30-00-001'], new Date(0))).toBe('2026-03-01-09-30-00-002');
});

test('a clock at the end of all years still gives names of their own', () => {
  const last = freeStateId([], new Date(8.64e15));
  expect(last).toBe('9999-12-31-23-59-59-999');
  expect(freeStateId([last], new Date(8.64e15))).toBe(`${last}-2`);
});
