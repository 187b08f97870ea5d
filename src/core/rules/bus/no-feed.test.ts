import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { noFeed } from './no-feed.ts';

const found = (boat: Boat) => {
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(noFeed, { boat, plan: { joins } });
};
const unfed = aBoat().change((boat) => {
  for (const panel of boat.supply.panels) panel.circuits = panel.circuits.filter(({ feeds }) => !feeds.includes('nav'));
});

test('a bus with its circuit passes', () => {
  expect(found(aBoat().boat)).toEqual([]);
});

test('a bus without one is a doubt, planned on the nearest panel', () => {
  expect(found(unfed.boat)).toMatchObject([
    { level: 'doubt', about: ['nav'], says: expect.stringMatching(/nearest panel/) },
  ]);
});

test('without any panel it says that the volts are not known', () => {
  const bare = unfed.with({ supply: { banks: [], panels: [], dcdc: [] } }).boat;
  expect(found(bare)).toMatchObject([{ says: expect.stringMatching(/volts/) }]);
});
