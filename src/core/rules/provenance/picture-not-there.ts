import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Observation, Rule } from '../rule.ts';
import { photoNotFound, underlayNotFound } from './picture-words.ts';

const thingWords = ({ boat, places, ways, kit, banks, panels }: BoatIndex, id: string): string => {
  if (panels.has(id)) return `the panel ${id}`;
  if (banks.has(id)) return `the bank ${id}`;
  const way = ways.get(id);
  const opening = boat.openings?.find((entry) => entry.id === id);
  if (way === undefined) return places.get(id)?.name ?? kit.get(id)?.name ?? opening?.name ?? id;
  const [from, to] = way.ends.map((end) => places.get(end)?.name ?? end);
  return `the way from ${from} to ${to}`;
};

const cure =
  'Put the folder of pictures that belongs to the boat back beside her file, take the picture again, or take it out.';

/** Two photos of one thing differ in their hash: so much of it tells any two aboard apart. */
const startOf = (hash: string): string => hash.slice(0, 8);

const ofUnderlays = ({ boat: { underlays = [] } }: BoatIndex, there: ReadonlySet<string>): Observation[] =>
  underlays
    .filter(({ picture }) => !there.has(picture.hash))
    .map(({ view }) => ({
      about: [],
      apart: [view],
      says: underlayNotFound(view),
      cure,
    }));

const ofPhotos = (index: BoatIndex, there: ReadonlySet<string>): Observation[] =>
  (index.boat.photos ?? [])
    .filter(({ picture }) => !there.has(picture.hash))
    .map(({ of, shows, picture }) => ({
      about: [of],
      apart: [shows, startOf(picture.hash)],
      says: photoNotFound({ shows, name: thingWords(index, of) }),
      cure,
    }));

const ofTraced = ({ boat: { openings = [] } }: BoatIndex, there: ReadonlySet<string>): Observation[] =>
  openings
    .filter(({ traced }) => traced !== undefined && !there.has(traced.picture.hash))
    .map(({ id, name }) => ({
      about: [id],
      apart: ['traced'],
      says: photoNotFound({ shows: 'front', name }),
      cure,
    }));

/** A picture that the boat file names lies beside it. Where nobody looked beside the file there is nothing to say. */
export const pictureNotThere: Rule = {
  id: 'provenance/picture-not-there',
  level: 'doubt',
  title: 'A picture that the boat file names is not beside it.',
  sources: ['project-provenance'],
  looksAt: 'whole-plan',
  check: ({ index, pictures }) =>
    pictures === undefined
      ? []
      : [...ofUnderlays(index, pictures), ...ofPhotos(index, pictures), ...ofTraced(index, pictures)],
};
