import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Way } from '../../boat/boat-schema.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { ratedBulkhead } from './rated-bulkhead.ts';

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

const found = (through: NonNullable<Way['through']>, lines: readonly LineEntry[]) => {
  const { boat } = aBoat().change((draft) => {
    for (const way of draft.ways) if (way.id === 'locker-helm') way.through = through;
  });
  return findingsOf(ratedBulkhead, { boat, plan: { lines: [...lines] } });
};

test('two new cables through a watertight bulkhead are one advice that names it and counts them', () => {
  const [finding, ...others] = found('watertight', [line(), line({ id: 'pair:a.x~c.y' })]);
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ level: 'advice', about: ['locker-helm'] });
  expect(finding?.says).toContain('(watertight, 2 new)');
});

test('a plain bulkhead, one nobody goes through, and cable that lies there already are not spoken of', () => {
  expect(found('plain', [line()])).toEqual([]);
  expect(found('fire', [line({ ways: ['helm-mast'] })])).toEqual([]);
  expect(found('fire', [line({ kept: ['old'] })])).toEqual([]);
});
