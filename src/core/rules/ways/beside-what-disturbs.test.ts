import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { besideWhatDisturbs } from './beside-what-disturbs.ts';

const line = (own: Partial<LineEntry> = {}): LineEntry => ({
  id: 'pair:a.x~b.y',
  kind: 'pair',
  from: 'a.x',
  to: 'b.y',
  places: ['locker', 'helm'],
  ways: ['locker-helm'],
  lengthM: 3,
  longestM: 3.2,
  guessed: false,
  ...own,
});

const found = (near: readonly string[], own: Partial<LineEntry> = {}) => {
  const { boat } = aBoat().change((draft) => {
    for (const way of draft.ways) if (way.id === 'locker-helm') way.near = [...near];
  });
  return findingsOf(besideWhatDisturbs, { boat, plan: { lines: [line(own)] } });
};

test('a pair beside the lead of the HF set is to lie 2 m off it (several handbooks)', () => {
  expect(found(['hf-coax'])).toMatchObject([
    { level: 'advice', about: ['locker-helm'], limit: { value: 2, unit: 'm' } },
  ]);
});

test('beside the starter cable 0.15 m do, and they cross at a right angle (several handbooks)', () => {
  const [finding] = found(['starter-cable']);
  expect(finding?.limit?.value).toBe(0.15);
  expect(finding?.cure).toContain('cross at 90 degrees');
});

test('a feed, a cable that lies there already and a way beside nothing are not spoken of', () => {
  expect(found(['hf-coax'], { kind: 'feed' })).toEqual([]);
  expect(found(['hf-coax'], { kept: ['old'] })).toEqual([]);
  expect(found([])).toEqual([]);
});
