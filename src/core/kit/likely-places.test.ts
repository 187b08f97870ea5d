import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { boatFromPattern } from '../starting/boat-from-pattern.ts';
import { boatPatterns } from '../starting/patterns/index.ts';
import { beyondLead } from './beyond-lead.ts';
import { likelyPlaces } from './likely-places.ts';
import { boatWith, emptyBoat, typical } from './sloop.test-helper.ts';

const firstFor = (id: string): string | undefined => likelyPlaces(emptyBoat(), typical(id))[0]?.id;

test('a screen is offered the helm, a box the locker, an antenna the rail, a shunt the batteries', () => {
  expect(
    ['multifunction-display-10', 'ethernet-switch', 'gnss-antenna-bus', 'battery-shunt-bus', 'heading-sensor-bus'].map(
      firstFor,
    ),
  ).toEqual(['helm', 'locker', 'stern-rail', 'battery-box', 'mast-base']);
});

test('a unit that leaves makes room where it stood', () => {
  const { boat } = aBoat().unit('gnss', { fate: 'goes', place: 'mast-base' });
  expect(likelyPlaces(boat, { ...typical('gnss-antenna-bus'), kind: 'gnss' })[0]?.id).toBe('mast-base');
});

test('a second screen is offered another place before the one that has a screen', () => {
  const { boat } = aBoat().add({
    places: [{ id: 'fly', name: 'flybridge helm', xM: 4, yM: 0, zM: 3, exposure: 'spray', reach: 'open', tees: false }],
  });
  expect(likelyPlaces({ ...boat, kit: [] }, typical('multifunction-display-10'))[0]?.id).toBe('helm');
  expect(likelyPlaces(boat, typical('multifunction-display-10'))[0]?.id).toBe('fly');
});

test('an antenna on a lead that may not be made longer stays within reach of its set', () => {
  const empty = emptyBoat();
  const far = empty.ways.map((way) =>
    way.ends.includes('stern-rail') ? { ...way, length: { ...way.length, valueM: 14 } } : way,
  );
  const boat = { ...boatWith(empty, ['ais-class-b']), ways: far };
  const antenna = typical('gnss-antenna-coax');
  expect(likelyPlaces({ ...boat, kit: [] }, antenna)[0]?.id).toBe('stern-rail');
  expect(likelyPlaces(boat, antenna)[0]?.id).not.toBe('stern-rail');
});

test('a set whose antenna is aboard already stays within reach of it', () => {
  const empty = emptyBoat();
  const first = likelyPlaces(empty, typical('ais-class-b'))[0]?.id ?? '';
  const boat = boatWith(empty, ['gnss-antenna-coax']);
  const far = boat.ways.map((way) =>
    way.ends.includes(first) ? { ...way, length: { ...way.length, valueM: 14 } } : way,
  );
  expect(likelyPlaces(boat, typical('ais-class-b'))[0]?.id).toBe(first);
  expect(likelyPlaces({ ...boat, ways: far }, typical('ais-class-b'))[0]?.id).not.toBe(first);
});

test.each(boatPatterns.map(({ id }) => id))(
  'aboard a %s of any usual length the first place offered for an antenna on a fixed lead is within its reach',
  (pattern) => {
    const antenna = typical('gnss-antenna-coax');
    const { lengthM: usualM } = boatFromPattern({ pattern, name: 'Knot' }).hull;
    for (const times of [0.8, 1, 1.2, 1.4]) {
      const boat = boatWith(boatFromPattern({ pattern, name: 'Knot', lengthM: usualM * times }), ['ais-class-b']);
      const [place] = likelyPlaces(boat, antenna);
      expect([times, place?.id, place && beyondLead(boat, antenna)(place).surelyM]).toEqual([times, place?.id, 0]);
    }
  },
);

test('every place is offered once, whatever order the file lists them in', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...typicalSheets),
      fc.shuffledSubarray([...aBoat().boat.places], { minLength: 5 }),
      (sheet, places) => {
        const offered = likelyPlaces({ ...aBoat().boat, places }, sheet);
        expect(offered).toEqual(likelyPlaces(aBoat().boat, sheet));
        expect(new Set(offered).size).toBe(places.length);
      },
    ),
    { numRuns: 60 },
  );
});
