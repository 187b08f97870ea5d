import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Photo } from '../../boat/photo.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { pictureNotThere } from './picture-not-there.ts';

const [a, b] = ['a'.repeat(64), 'b'.repeat(64)];

const picture = (hash: string): Photo['picture'] => ({ hash, type: 'jpeg', widthPx: 800, heightPx: 600 });

const photo = (of: string, shows: Photo['shows'], hash: string): Photo => ({ of, shows, picture: picture(hash) });

const withPictures = (...photos: Photo[]): Boat => ({
  ...aBoat().boat,
  photos,
  underlays: [
    {
      view: 'side',
      picture: picture(b),
      from: { xPx: 0, yPx: 500, alongM: 0, acrossM: 0 },
      to: { xPx: 800, yPx: 500, alongM: 9, acrossM: 0 },
    },
  ],
});

test('where nobody looked beside the file, nothing is said of what lies there', () => {
  expect(findingsOf(pictureNotThere, { boat: withPictures(photo('display', 'front', a)) })).toEqual([]);
});

test('a boat whose pictures are all there passes, as does one without any', () => {
  const boat = withPictures(photo('display', 'front', a));
  expect(findingsOf(pictureNotThere, { boat, pictures: new Set([a, b]) })).toEqual([]);
  expect(findingsOf(pictureNotThere, { pictures: new Set() })).toEqual([]);
});

test('a photo that is not there is a doubt about what it shows, each by itself', () => {
  const boat = withPictures(photo('display', 'front', a), photo('display', 'label', a), photo('helm', 'other', b));
  expect(findingsOf(pictureNotThere, { boat, pictures: new Set([b]) })).toMatchObject([
    { id: 'provenance/picture-not-there:display:front:aaaaaaaa', level: 'doubt', about: ['display'] },
    { id: 'provenance/picture-not-there:display:label:aaaaaaaa', level: 'doubt', about: ['display'] },
  ]);
});

test('a photo of a way names the way by its ends', () => {
  const boat = withPictures(photo('locker-helm', 'other', a));
  const [finding] = findingsOf(pictureNotThere, { boat, pictures: new Set([b]) });
  const names = ['locker', 'helm'].map((id) => boat.places.find((place) => place.id === id)?.name ?? '');
  for (const name of names) expect(finding?.says).toContain(name);
});

test('a picture under the drawing that is not there is a doubt that names its view', () => {
  const [finding, ...others] = findingsOf(pictureNotThere, { boat: withPictures(), pictures: new Set() });
  expect(others).toEqual([]);
  expect(finding).toMatchObject({ id: 'provenance/picture-not-there:side', about: [] });
  expect(finding?.says).toContain('from the side');
});
