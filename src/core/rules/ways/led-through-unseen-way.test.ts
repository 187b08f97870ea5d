import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { ledThroughUnseenWay } from './led-through-unseen-way.ts';

const line = (fields: Partial<LineEntry> = {}): LineEntry => ({
  id: 'drop:gnss.bus~nav',
  kind: 'drop',
  from: 'gnss.bus',
  to: 'nav',
  places: ['stern-rail', 'locker'],
  ways: ['locker-stern'],
  lengthM: 4.8,
  longestM: 5,
  guessed: false,
  ...fields,
});
const boatWith = (known: 'pulled' | 'seen' | 'assumed') =>
  aBoat().change((boat) => {
    for (const way of boat.ways) if (way.id === 'locker-stern') way.known = known;
  }).boat;

test('new cable through a way that was seen or pulled passes', () => {
  for (const known of ['seen', 'pulled'] as const) {
    expect(findingsOf(ledThroughUnseenWay, { boat: boatWith(known), plan: { lines: [line()] } })).toEqual([]);
  }
});

test('two new cables through one assumed way are one doubt about that way, with its length and its longest', () => {
  const lines = [line(), line({ id: 'pair:a.x~b.y', kind: 'pair' })];
  const [finding, ...others] = findingsOf(ledThroughUnseenWay, { boat: boatWith('assumed'), plan: { lines } });
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ level: 'doubt', about: ['locker-stern'] });
  expect(finding?.says).toMatch(/^2 new cables .* 4\.50 m and could be 4\.60 m/);
});

test('a cable that lies in the way already proves it', () => {
  const lines = [line({ kept: ['old'] })];
  expect(findingsOf(ledThroughUnseenWay, { boat: boatWith('assumed'), plan: { lines } })).toEqual([]);
});
