import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { feedRows } from './feed-rows.ts';

const rowsOf = (boat: Boat) => feedRows(cardBoat(boat), plan(boat, new Map()));

test('every feed of the plan is a row with its panel and length, and nothing of the Tern lacks one', () => {
  const { boat } = aBoat();
  const { fed, unfed } = rowsOf(boat);
  const feeds = plan(boat, new Map()).lines.filter(({ kind }) => kind === 'feed');
  expect(fed.map(({ key }) => key)).toEqual(feeds.map(({ id }) => id));
  for (const { fact } of fed) expect(fact).toMatch(/^from panel \S+, (about )?[\d.]+ m/);
  expect(unfed).toEqual([]);
});

test('what no circuit names is not fed: the bus first, then each unit with a DC port, but nothing that goes ashore', () => {
  const bare = aBoat().change((draft) => {
    for (const panel of draft.supply.panels) panel.circuits = [];
  });
  const names = rowsOf(bare.boat).unfed.map(({ what }) => what);
  expect(names[0]).toBe(bare.boat.buses[0]?.name);
  expect(names).toContain(bare.boat.kit.find(({ id }) => id === 'display')?.name);
  const gone = rowsOf(bare.unit('display', { fate: 'goes' }).boat).unfed.map(({ key }) => key);
  expect(gone.filter((key) => key.startsWith('display.'))).toEqual([]);
});

test('a feed that no way leads for is among those that are missing', () => {
  const { boat } = aBoat().change((draft) => {
    draft.ways = draft.ways.filter(({ ends }) => !ends.includes('helm'));
  });
  expect(rowsOf(boat).unfed.map(({ fact }) => fact)).toContainEqual(expect.stringMatching(/^no way leads there from /));
});
