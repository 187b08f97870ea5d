import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Place, Way } from '../boat/boat-schema.ts';
import type { LineEntry } from '../plan-shape.ts';
import { labelSpots } from './label-spots.ts';

const tern = aBoat().boat;
const place = (id: string): Place => ({
  id,
  name: id,
  xM: 4,
  yM: 0,
  zM: 0,
  exposure: 'dry',
  reach: 'open',
  tees: false,
});
const taped = (valueM: number) => ({ valueM, how: 'taped', lessM: 0, moreM: 0 }) as const;

const rigged = indexBoat(
  aBoat().with({
    places: [...tern.places, ...['cabin', 'box', 'collar', 'truck'].map(place)],
    ways: [
      ...tern.ways,
      { id: 'locker', ends: ['cabin', 'box'], length: taped(2), kind: 'open', known: 'seen' },
      { id: 'gland', ends: ['box', 'collar'], length: taped(1), kind: 'gland', known: 'seen', through: 'deck' },
      { id: 'inside', ends: ['collar', 'truck'], length: taped(12), kind: 'mast', known: 'seen' },
    ],
  }).boat,
);

const line: Pick<LineEntry, 'id' | 'from' | 'to' | 'places' | 'ways'> = {
  id: 'coax:aerial.coax~radio.coax',
  from: 'aerial.coax',
  to: 'radio.coax',
  places: ['truck', 'collar', 'box', 'cabin'],
  ways: ['inside', 'gland', 'locker'],
};
const back = {
  ...line,
  from: line.to,
  to: line.from,
  places: [...line.places].reverse(),
  ways: [...line.ways].reverse(),
};
const masts = [{ breakAt: 'box', lines: [{ line: line.id, aloftM: 12, weightKg: 1 }] }];

test('a line that passes nothing is labelled at its two ends, each telling of the other', () => {
  expect(labelSpots(rigged, { ...line, places: ['box', 'cabin'], ways: ['locker'] }, [])).toEqual([
    { at: 'end', end: 'aerial.coax', far: 'radio.coax', place: 'box' },
    { at: 'end', end: 'radio.coax', far: 'aerial.coax', place: 'cabin' },
  ]);
});

test('a deck gets a label on each side, in the order in which the line meets them', () => {
  const barriers = labelSpots(rigged, line, []).filter(({ at }) => at === 'barrier');
  expect(barriers).toEqual([
    { at: 'barrier', side: 'near', ways: ['gland'], place: 'collar' },
    { at: 'barrier', side: 'far', ways: ['gland'], place: 'box' },
  ]);
});

test('between two bulkheads one label is on a side of both, unless the line is parted there', () => {
  const ways = rigged.boat.ways.map((way): Way => (way.id === 'locker' ? { ...way, through: 'plain' } : way));
  const bulkhead = indexBoat({ ...rigged.boat, ways });
  const sides = (parted: typeof masts) =>
    labelSpots(bulkhead, line, parted).map((spot) => (spot.at === 'barrier' ? spot.side : spot.at));
  expect(sides([])).toEqual(['end', 'near', 'between', 'far', 'end']);
  expect(sides(masts)).toEqual(['end', 'near', 'far', 'break', 'break', 'near', 'far', 'end']);
});

test('where the cables of a mast are parted each half has its own, the mast’s on the side of the mast', () => {
  const halves = (one: typeof line) =>
    labelSpots(rigged, one, masts).flatMap((spot) => (spot.at === 'break' ? [`${spot.half} at ${spot.place}`] : []));
  expect(halves(line)).toEqual(['mast at box', 'boat at box']);
  expect(halves(back)).toEqual(['boat at box', 'mast at box']);
  expect(halves({ ...line, id: 'another' })).toEqual([]);
});

test('a line has as many labels from either end', () => {
  expect(labelSpots(rigged, back, masts)).toHaveLength(labelSpots(rigged, line, masts).length);
});

test('a line without a route is labelled at both ends all the same', () => {
  expect(labelSpots(rigged, { ...line, places: [], ways: [] }, masts).map(({ at }) => at)).toEqual(['end', 'end']);
});
