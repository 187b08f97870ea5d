import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
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
  const far = emptyBoat().places.map((place) => (place.id === 'stern-rail' ? { ...place, xM: -12 } : place));
  const boat = { ...boatWith(emptyBoat(), ['ais-class-b']), places: far };
  const antenna = typical('gnss-antenna-coax');
  expect(likelyPlaces({ ...boat, kit: [] }, antenna)[0]?.id).toBe('stern-rail');
  expect(likelyPlaces(boat, antenna)[0]?.id).not.toBe('stern-rail');
});

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
