import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { shortLabels } from './short-label.ts';

const labelsOf = (boat: Boat): ReadonlyMap<string, string> => shortLabels(boat.kit, indexBoat(boat).sheetOf);

test('a unit is called by its kind, a screen by its size, a converter by its two languages', () => {
  const labels = labelsOf(aBoat().boat);
  expect(labels.get('display')).toBe('screen 7 in');
  expect(labels.get('radio')).toBe('VHF radio');
  expect(labels.get('converter')).toBe('converter 0183/2000');
});

test('two alike are told apart by the word after the comma of their names', () => {
  const boat = aBoat()
    .unit('gnss', { name: 'GNSS receiver, stern' })
    .add({
      kit: [{ id: 'gnss-2', name: 'GNSS receiver, mast', sheet: 'gnss-receiver', fate: 'comes', place: 'helm' }],
    }).boat;
  const labels = labelsOf(boat);
  expect([labels.get('gnss'), labels.get('gnss-2')]).toEqual(['GNSS, stern', 'GNSS, mast']);
});
