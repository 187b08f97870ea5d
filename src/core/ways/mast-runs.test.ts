import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat, Place } from '../boat/boat-schema.ts';
import type { LineEntry } from '../plan-shape.ts';
import { mastRuns } from './mast-runs.ts';

const tern = aBoat().boat;
const place = (id: string, own: Partial<Place>): Place => ({
  id,
  name: id,
  xM: 4,
  yM: 0,
  zM: 0,
  exposure: 'weather',
  reach: 'aloft',
  tees: false,
  ...own,
});
const taped = (valueM: number) => ({ valueM, how: 'taped', lessM: 0, moreM: 0 }) as const;

/** The small boat with a mast of 12 m from a deck collar, and a box below the deck. */
const rigged = (box: Partial<Place> = { exposure: 'dry', reach: 'open' }, hull: Partial<Boat['hull']> = {}): Boat =>
  aBoat().with({
    hull: { ...tern.hull, ...hull },
    places: [
      ...tern.places,
      place('box', { zM: 1, ...box }),
      place('collar', { zM: 2, reach: 'open' }),
      place('spreaders', { zM: 8 }),
      place('truck', { zM: 14 }),
    ],
    ways: [
      ...tern.ways,
      { id: 'gland', ends: ['box', 'collar'], length: taped(1), kind: 'gland', known: 'seen', through: 'deck' },
      { id: 'lower', ends: ['collar', 'spreaders'], length: taped(6), kind: 'mast', known: 'seen' },
      { id: 'upper', ends: ['spreaders', 'truck'], length: taped(6), kind: 'mast', known: 'seen' },
    ],
  }).boat;

const coax: LineEntry = {
  id: 'coax:aerial.coax~radio.coax',
  kind: 'coax',
  from: 'aerial.coax',
  to: 'radio.coax',
  places: ['truck', 'spreaders', 'collar', 'box'],
  ways: ['upper', 'lower', 'gland'],
  lengthM: 14,
  longestM: 14,
  guessed: false,
};
const runsIn = (boat: Boat, lines: readonly LineEntry[] = [coax]) =>
  mastRuns({ index: indexBoat(boat), lines, buses: [] });

test('a coax to the truck is 12 m in the mast, held six times, parted in the box under the deck', () => {
  const [mast, ...others] = runsIn(rigged());
  expect(others).toEqual([]);
  expect(mast).toMatchObject({
    foot: 'collar',
    top: 'truck',
    stepped: 'deck',
    stepKnown: false,
    heightM: 12,
    breakAt: 'box',
    holds: 6,
    lines: [{ line: coax.id, aloftM: 12 }],
  });
  // 6.1 mm outside: 29.2 mm², 2 g a metre for each.
  expect(mast?.weightKg).toBeCloseTo((2 * Math.PI * 6.1 ** 2 * 12) / 4 / 1000, 9);
});

test('what the boat file says of the step counts', () => {
  const boat = rigged({ exposure: 'dry', reach: 'open' }, { masts: [{ foot: 'collar', stepped: 'keel' }] });
  expect(runsIn(boat)[0]).toMatchObject({ stepped: 'keel', stepKnown: true });
});

test('a box in the bilge, or one nobody reaches, is no place to part a cable', () => {
  expect(runsIn(rigged({ exposure: 'bilge', reach: 'panel' }))[0]).not.toHaveProperty('breakAt');
  expect(runsIn(rigged({ exposure: 'dry', reach: 'hard' }))[0]).not.toHaveProperty('breakAt');
});

test('a mast without a new cable is left out, and one more cable never weighs less', () => {
  expect(runsIn(rigged(), [{ ...coax, kept: ['old'] }])).toEqual([]);
  const [one] = runsIn(rigged());
  const [two] = runsIn(rigged(), [coax, { ...coax, id: 'pair:wind.a~box.b', kind: 'pair' }]);
  expect(two?.weightKg).toBeGreaterThan(one?.weightKg ?? 0);
  expect(two?.lines).toHaveLength(2);
});
