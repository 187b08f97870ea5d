import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Cable } from '../../boat/boat-schema.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { deadCable } from './dead-cable.ts';

const cable = (id: string, fate: Cable['fate']): Cable => ({
  id,
  kind: 'coax',
  from: { place: 'locker' },
  to: { place: 'helm' },
  ways: ['locker-helm'],
  length: { valueM: 3, how: 'taped' },
  diameterMm: 6,
  condition: 'good',
  fate,
});
const found = (cables: Cable[]) => findingsOf(deadCable, { boat: aBoat().with({ cables }).boat });

test('two cables that go are one advice that lists both with their ends', () => {
  const [finding, ...others] = found([cable('old-coax', 'goes'), cable('old-lamp', 'goes'), cable('kept', 'stays')]);
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ level: 'advice', about: ['old-coax', 'old-lamp'] });
  expect(finding?.says).toContain('old-coax (electrical locker to helm dash)');
});

test('where every cable stays nothing is said', () => {
  expect(found([cable('kept', 'stays')])).toEqual([]);
});
