import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { papersNotStarted } from './papers-not-started.ts';
import { ternWithAis } from './typed-case.test-helper.ts';

const entry = { paper: 'ship-number', for: ['ais'], waitDays: 21, waitFrom: 'memory' } as const;
const found = (...states: ('to-start' | 'to-ask' | 'asked' | 'have' | 'not-needed')[]) =>
  findingsOf(papersNotStarted, {
    boat: ternWithAis(),
    plan: { shipPapers: states.map((state) => ({ ...entry, state, for: ['ais'] })) },
  });

test('a set that comes and whose papers nobody asked for is a doubt, with how long they take', () => {
  expect(found('to-start')).toMatchObject([
    {
      id: 'settings/papers-not-started:ais',
      level: 'doubt',
      says: expect.stringContaining('some 21 days, from memory'),
    },
  ]);
});

test('asked for, there, not needed, or still to be asked about, it is none', () => {
  expect(found('asked', 'have', 'not-needed', 'to-ask')).toEqual([]);
});

test('for sets that are aboard already nothing is to be ordered', () => {
  const plan = { shipPapers: [{ ...entry, state: 'to-start' as const, for: ['radio'] }] };
  expect(findingsOf(papersNotStarted, { boat: ternWithAis(), plan })).toEqual([]);
});
