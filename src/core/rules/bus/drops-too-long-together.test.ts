import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { dropsTooLongTogether } from './drops-too-long-together.ts';

test('drops of exactly 78 m together pass: thirteen of 6 m (BB-03, several public installation handbooks)', () => {
  expect(findingsOf(dropsTooLongTogether, { bus: { dropsM: 13 * 6 } })).toEqual([]);
});

test('one more drop of 0.1 m is a fault (BB-03)', () => {
  const [finding] = findingsOf(dropsTooLongTogether, { bus: { dropsM: 13 * 6 + 0.1 } });
  expect(finding).toMatchObject({ level: 'fault', about: ['nav'], limit: { value: 78 } });
});
