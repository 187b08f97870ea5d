import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { higherThanAirDraft } from './higher-than-air-draft.ts';
import { ternWithAis } from './typed-case.test-helper.ts';

const found = (mostM: number) =>
  findingsOf(higherThanAirDraft, {
    boat: ternWithAis(),
    plan: { airDraft: { valueM: mostM, mostM, how: 'taped', parts: [] } },
  });

test('what comes and stands higher than the air draft makes her taller than any chart knows', () => {
  const low = found(0.2);
  expect(low.every(({ level }) => level === 'fault')).toBe(true);
  expect(low.map(({ about }) => about[0])).toContain('ais');
  expect(low.map(({ about }) => about[0])).not.toContain('radio');
});

test('below the air draft it is none', () => {
  expect(found(12)).toEqual([]);
});
