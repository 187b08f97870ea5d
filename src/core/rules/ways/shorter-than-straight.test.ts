import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { shorterThanStraight } from './shorter-than-straight.ts';

const withHelmMast = (valueM: number) =>
  aBoat().change((boat) => {
    for (const way of boat.ways) if (way.id === 'helm-mast') way.length = { valueM, how: 'taped' };
  }).boat;

// helm (5, 0.6, 1.4) to mast base (6, 0, 0.5): the root of 1 + 0.36 + 0.81 is 1.473 m
test('a way as long as the straight line passes', () => {
  expect(findingsOf(shorterThanStraight, { boat: withHelmMast(1.473) })).toEqual([]);
});

test('a way shorter than the straight line is a fault that gives both lengths', () => {
  const [finding] = findingsOf(shorterThanStraight, { boat: withHelmMast(1.2) });
  expect(finding).toMatchObject({ level: 'fault', about: ['helm-mast'], measured: { value: 1.2 } });
  expect(finding?.limit?.value).toBeCloseTo(1.473, 3);
});
