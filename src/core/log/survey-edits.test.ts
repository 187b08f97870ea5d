import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { applyEdits } from '../boat/history.ts';
import { startHistory } from '../boat/start-history.ts';
import { boatLog } from './boat-log.ts';
import type { LogEntry } from './log-entry.ts';
import { leftTickId, offeredEntries } from './survey-edits.ts';

const tern = aBoat().boat;
const picture = { hash: 'ab'.repeat(32), type: 'jpeg', widthPx: 20, heightPx: 10 } as const;
const [way, otherWay] = tern.ways;
const [place] = tern.places;
const [unit] = tern.kit;
if (way === undefined || otherWay === undefined || place === undefined || unit === undefined)
  throw new Error('The Tern has places, ways and units.');

type Bare = LogEntry extends infer One ? (One extends LogEntry ? Omit<One, 'id' | 'at'> : never) : never;
const stamped = (entries: readonly Bare[]): LogEntry[] =>
  entries.map(
    (entry, at) =>
      // reason: with its id and moment an entry is one of the kinds whole
      ({
        ...entry,
        id: `entry${String(at).padStart(4, '0')}`,
        at: `2027-03-31T09:30:${String(at).padStart(2, '0')}Z`,
      }) as LogEntry,
  );
const offeredBy = (boat: Boat, ...entries: readonly Bare[]) => offeredEntries(boat, boatLog(stamped(entries)));

test('a taped length comes into the boat as taped, and is not offered again', () => {
  const found: Bare = { kind: 'measure', of: way.id, valueM: 2.362, how: 'taped' };
  const [offer] = offeredBy(tern, found);
  if (offer?.edit === undefined) throw new Error('It is offered.');
  const { boat } = applyEdits(startHistory(tern), [offer.edit]);
  expect(boat.ways.find(({ id }) => id === way.id)?.length).toEqual({ valueM: 2.362, how: 'taped' });
  expect(offeredBy(boat, found)).toEqual([]);
});

test('of two lengths of one way only the later is offered, and one taken back is not', () => {
  const [first, second]: Bare[] = [
    { kind: 'measure', of: way.id, valueM: 2, how: 'taped' },
    { kind: 'measure', of: way.id, valueM: 3, how: 'taped' },
  ];
  if (first === undefined || second === undefined) throw new Error('There are two.');
  expect(offeredBy(tern, first, second).map(({ entry }) => entry)).toMatchObject([{ valueM: 3 }]);
  expect(offeredBy(tern, first, second, { kind: 'withdrawn', entry: 'entry0001' })).toMatchObject([
    { entry: { valueM: 2 } },
  ]);
});

test('what is not as the file says is told of without an edit, until somebody has seen to it', () => {
  const found: Bare = { kind: 'seen', of: place.id, is: 'not' };
  const [offer] = offeredBy(tern, found);
  expect(offer).toMatchObject({ entry: { of: place.id } });
  expect(offer?.edit).toBeUndefined();
  expect(offeredBy(tern, found, { kind: 'tick', of: leftTickId('entry0000'), done: true })).toEqual([]);
});

test('what is of nothing in the boat is not offered', () => {
  const nowhere = 'no-such-thing';
  expect(
    offeredBy(
      tern,
      { kind: 'measure', of: nowhere, valueM: 2, how: 'taped' },
      { kind: 'seen', of: nowhere, is: 'so' },
      { kind: 'aboard', of: nowhere, serial: 'X1' },
      { kind: 'photo', of: nowhere, shows: 'front', picture },
    ),
  ).toEqual([]);
});

const foundArb: fc.Arbitrary<Bare> = fc.oneof(
  fc.record({
    kind: fc.constant('measure' as const),
    of: fc.constantFrom(way.id, otherWay.id, unit.id),
    valueM: fc.integer({ min: 1, max: 9000 }).map((mm) => mm / 1000),
    how: fc.constant('taped' as const),
  }),
  fc.record({
    kind: fc.constant('seen' as const),
    of: fc.constantFrom(way.id, otherWay.id, place.id),
    is: fc.constantFrom('so' as const, 'pulled' as const),
  }),
  fc.record({
    kind: fc.constant('aboard' as const),
    of: fc.constantFrom(...tern.kit.map(({ id }) => id)),
    serial: fc.constantFrom('A1', 'B2'),
    software: fc.constantFrom('1.0', '2.0'),
  }),
  fc.record({
    kind: fc.constant('photo' as const),
    of: fc.constantFrom(way.id, place.id, unit.id),
    shows: fc.constantFrom('front' as const, 'other' as const),
    picture: fc.constant(picture),
  }),
);

test('all that is offered comes into the boat as one step, after which nothing is offered; undone, all is again', () => {
  fc.assert(
    fc.property(fc.array(foundArb, { maxLength: 20 }), (found) => {
      const offers = offeredBy(tern, ...found);
      const { boat } = applyEdits(
        startHistory(tern),
        offers.flatMap(({ edit }) => (edit === undefined ? [] : [edit])),
      );
      expect(offeredBy(boat, ...found)).toEqual([]);
      expect(offeredBy(tern, ...found)).toEqual(offers);
    }),
    { numRuns: 40 },
  );
});
