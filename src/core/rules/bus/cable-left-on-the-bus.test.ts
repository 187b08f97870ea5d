import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Cable } from '../../boat/boat-schema.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { cableLeftOnTheBus } from './cable-left-on-the-bus.ts';

const cable = (kind: 'trunk' | 'drop', from: string, to: string, ways: string[], id = 'old'): Cable => ({
  id,
  kind,
  from: { place: from },
  to: { place: to },
  serves: 'nav',
  ways,
  length: { valueM: 3, how: 'taped' },
  diameterMm: 6.5,
  condition: 'good',
  fate: 'stays',
});

/** The small boat, her trunk from the helm by the locker to the mast; only the way from helm to mast is free of it. */
const found = (cables: Cable[], { pinned = true, kept = [] as string[] } = {}) =>
  findingsOf(cableLeftOnTheBus, {
    boat: aBoat()
      .with({ cables })
      .change((boat) => {
        if (pinned)
          boat.pins = { layouts: { nav: { grade: 'light', walk: [{ place: 'helm', tees: [] }], state: 'fixed' } } };
      }).boat,
    plan: {
      lines: [
        {
          id: 'drop:nav~gnss.bus',
          kind: 'drop',
          from: 'nav',
          to: 'gnss.bus',
          places: ['locker', 'stern-rail'],
          ways: ['locker-stern'],
          lengthM: 5,
          longestM: 5,
          guessed: false,
          kept,
        },
      ],
    },
  });

test('kept trunk along the whole walk passes, and so does a kept drop that a unit uses', () => {
  expect(found([cable('trunk', 'helm', 'mast-base', ['locker-helm', 'locker-mast'])])).toEqual([]);
  expect(found([cable('drop', 'locker', 'stern-rail', ['locker-stern'])], { kept: ['old'] })).toEqual([]);
});

test('a trunk cable from one end of the trunk to the other by another way closes a ring', () => {
  expect(found([cable('trunk', 'mast-base', 'helm', ['helm-mast'])])).toMatchObject([
    { level: 'fault', about: ['nav', 'old'], says: expect.stringContaining('ring') },
  ]);
});

test('a second trunk cable where the trunk runs once closes a ring too', () => {
  const twice = ['a', 'b'].map((id) => cable('trunk', 'locker', 'helm', ['locker-helm'], id));
  expect(found(twice)).toMatchObject([{ about: ['b', 'nav'], says: expect.stringContaining('ring') }]);
});

test('a trunk cable with one end on the trunk is a branch, one with none lies apart', () => {
  expect(found([cable('trunk', 'locker', 'stern-rail', ['locker-stern'])])).toMatchObject([
    { level: 'fault', says: expect.stringContaining('branch') },
  ]);
  expect(found([cable('trunk', 'battery-box', 'stern-rail', ['locker-stern'])])).toMatchObject([
    { level: 'doubt', says: expect.stringContaining('apart') },
  ]);
});

test('a drop that no unit uses is a doubt, and a fault where it can only hang on another drop', () => {
  expect(found([cable('drop', 'locker', 'stern-rail', ['locker-stern'])])).toMatchObject([{ level: 'doubt' }]);
  expect(found([cable('drop', 'battery-box', 'stern-rail', ['locker-stern'])])).toMatchObject([
    { level: 'fault', says: expect.stringContaining('another drop') },
  ]);
});

test('while the layout is only proposed, a trunk cable it does not use is a doubt', () => {
  expect(found([cable('trunk', 'mast-base', 'helm', ['helm-mast'])], { pinned: false })).toMatchObject([
    { level: 'doubt', cure: expect.stringContaining('Fix the layout') },
  ]);
});
