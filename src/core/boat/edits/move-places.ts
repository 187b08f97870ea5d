import type { Draft } from 'mutative';
import * as z from 'zod';
import { type Boat, placeSchema, type Way } from '../boat-schema.ts';
import { guessedLength } from '../guessed-length.ts';
import { idSchema } from '../ids.ts';
import type { Measure } from '../measure.ts';
import { type Spot, straightLineM } from '../straight-line.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';
import { toMillimetre } from './to-millimetre.ts';

const { xM, yM, zM } = placeSchema.shape;

/** Nearer than this, two places tell nothing of how much a way between them winds. */
const tooNearM = 0.05;

/** Places after a move that names only some of their three measures. */
const spotOf = (spot: Spot, moved: Partial<Spot>): Spot => ({
  xM: toMillimetre(moved.xM ?? spot.xM),
  yM: toMillimetre(moved.yM ?? spot.yM),
  zM: toMillimetre(moved.zM ?? spot.zM),
});

/** A guessed length follows the straight line between its places, winding as much as before. */
const followed = ({ length, kind }: Way, before: number, [one, other]: readonly [Spot, Spot]): Measure => {
  const straightM = straightLineM(one, other);
  if (before < tooNearM || straightM < tooNearM) return guessedLength(straightM, kind);
  const times = straightM / before;
  const valueM = toMillimetre(length.valueM * times);
  const lessM = length.lessM === undefined ? {} : { lessM: Math.min(valueM, toMillimetre(length.lessM * times)) };
  const moreM = length.moreM === undefined ? {} : { moreM: toMillimetre(length.moreM * times) };
  return { valueM, how: 'guessed', ...lessM, ...moreM };
};

type Ends = readonly [Spot, Spot];

/** Where the two ends of a way are; undefined where one of them is no place of the boat. */
const endsOf = (boat: Draft<Boat>, { ends }: Way): Ends | undefined => {
  const [one, other] = ends.map((end) => boat.places.find(({ id }) => id === end));
  if (one === undefined || other === undefined) return undefined;
  return [spotOf(one, {}), spotOf(other, {})];
};

/**
 * Moves places, each by what is named of its three measures. The lengths of guessed ways at them follow by the proportion of
 * the straight line; what was taped or comes from papers stays, and where it is now too short for where its ends are, the plan
 * says so.
 */
export const movePlaces = defineEdit({
  id: 'move-places',
  params: z.strictObject({
    places: z
      .array(
        z.strictObject({ place: idSchema, xM: z.exactOptional(xM), yM: z.exactOptional(yM), zM: z.exactOptional(zM) }),
      )
      .min(1),
  }),
  title: ({ places: [first, ...rest] }, boat) => {
    const name = first === undefined ? '' : nameInBoat(boat.places, first.place);
    if (rest.length === 0) return `Move ${name}.`;
    return `Move ${name} and ${rest.length === 1 ? 'another place' : `${rest.length} other places`}.`;
  },
  change: (boat, { places }) => {
    const moved = new Set(places.map(({ place }) => place));
    const guessed = boat.ways.flatMap((way) => {
      const ends =
        way.length.how === 'guessed' && way.ends.some((end) => moved.has(end)) ? endsOf(boat, way) : undefined;
      return ends === undefined ? [] : [{ way, beforeM: straightLineM(...ends) }];
    });
    for (const { place, ...to } of places) {
      const found = findInBoat(boat.places, place, 'place');
      Object.assign(found, spotOf(found, to));
    }
    for (const { way, beforeM } of guessed) {
      const ends = endsOf(boat, way);
      if (ends !== undefined && straightLineM(...ends) !== beforeM) way.length = followed(way, beforeM, ends);
    }
  },
});
