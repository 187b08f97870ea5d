import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import type { Boat } from '../boat-schema.ts';
import { canonicalBoat } from '../canonical-boat.ts';
import type { Photo } from '../photo.ts';
import { readBoat } from '../read-boat.ts';
import { writeBoat } from '../write-boat.ts';
import { edits } from './index.ts';

const tern = aBoat().boat;
const picture = { hash: 'ab'.repeat(32), type: 'jpeg', widthPx: 2000, heightPx: 1500 } as const;
const front: Photo = { of: 'gnss', shows: 'front', picture };
const label: Photo = { of: 'gnss', shows: 'label', picture: { ...picture, hash: 'cd'.repeat(32) } };
const withBoth: Boat = edits['add-photo'].apply(edits['add-photo'].apply(tern, label), front);

test('a photo stands in the file with what it shows, in one order whatever came first', () => {
  expect(canonicalBoat(readBoat(writeBoat(withBoth))).photos).toEqual([front, label]);
  expect(edits['add-photo'].title(front, tern)).toMatch(/^Add a photo of .+: front\.$/);
});

test('the same photo twice is one photo, in a file it is refused, and one of nothing is none', () => {
  expect(edits['add-photo'].apply(withBoth, front)).toEqual(withBoth);
  const twice = JSON.stringify({ ...tern, photos: [front, front] });
  expect(() => readBoat(twice)).toThrow('A photo stands once for what it shows.');
  expect(() => edits['add-photo'].apply(tern, { ...front, of: 'nothing' })).toThrow('"nothing"');
});

test('a photo taken away leaves the others, and the last one leaves nothing', () => {
  const one = edits['remove-photo'].apply(withBoth, { of: 'gnss', shows: 'front', hash: front.picture.hash });
  expect(one.photos).toEqual([label]);
  const none = edits['remove-photo'].apply(one, { of: 'gnss', shows: 'label', hash: label.picture.hash });
  expect(none).toEqual(tern);
  expect(() => edits['remove-photo'].apply(none, { of: 'gnss', shows: 'label', hash: label.picture.hash })).toThrow(
    'There is no such photo.',
  );
});

test('a bank that is taken out takes its photos out of the file', () => {
  const bank = { id: 'spare-bank', place: 'mast-base', chemistry: 'agm', nominalV: 12, capacityAh: 80, for: 'house' };
  const withBank = edits['add-bank'].apply(tern, bank);
  const pictured = edits['add-photo'].apply(withBank, { ...front, of: 'spare-bank' });
  expect(edits['remove-bank'].apply(pictured, { bank: 'spare-bank' })).toEqual(tern);
});

test('a unit that leaves the boat takes its photos out of the file', () => {
  expect(edits['remove-unit'].apply(withBoth, { unit: 'gnss' })).not.toHaveProperty('photos');
});
