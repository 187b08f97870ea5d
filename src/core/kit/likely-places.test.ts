import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { likelyPlaces } from './likely-places.ts';
import { emptyBoat } from './sloop.test-helper.ts';

const firstFor = (kind: string): string | undefined => likelyPlaces(emptyBoat(), kind)[0]?.id;

test('a screen is offered the helm, a box the locker, an antenna the rail, a shunt the batteries', () => {
  expect(['display', 'network-switch', 'position-antenna', 'battery-monitor', 'heading-sensor'].map(firstFor)).toEqual([
    'helm',
    'locker',
    'stern-rail',
    'battery-box',
    'mast-base',
  ]);
});

test('a unit that leaves makes room where it stood', () => {
  const { boat } = aBoat().unit('gnss', { fate: 'goes', place: 'mast-base' });
  expect(likelyPlaces(boat, 'gnss')[0]?.id).toBe('mast-base');
});

test('a second screen is offered another place before the one that has a screen', () => {
  const { boat } = aBoat().add({
    places: [{ id: 'fly', name: 'flybridge helm', xM: 4, yM: 0, zM: 3, exposure: 'spray', reach: 'open', tees: false }],
  });
  expect(likelyPlaces({ ...boat, kit: [] }, 'display')[0]?.id).toBe('helm');
  expect(likelyPlaces(boat, 'display')[0]?.id).toBe('fly');
});

test('every place is offered once, whatever order the file lists them in', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...typicalSheets.map(({ kind }) => kind)),
      fc.shuffledSubarray([...aBoat().boat.places], { minLength: 5 }),
      (kind, places) => {
        const offered = likelyPlaces({ ...aBoat().boat, places }, kind);
        expect(offered).toEqual(likelyPlaces(aBoat().boat, kind));
        expect(new Set(offered).size).toBe(places.length);
      },
    ),
    { numRuns: 60 },
  );
});
