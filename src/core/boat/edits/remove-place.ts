import type { Draft } from 'mutative';
import * as z from 'zod';
import type { Boat } from '../boat-schema.ts';
import { idSchema } from '../ids.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { fewInWords } from './few-in-words.ts';
import { findInBoat } from './find-in-boat.ts';
import { leaveWork } from './leave-work.ts';
import { nameInBoat } from './name-in-boat.ts';
import { standingAt } from './standing-at.ts';
import { takeWaysOut, throughInWords } from './take-ways-out.ts';
import { withoutPhotos } from './without-photos.ts';

const waysAt = ({ ways }: Boat | Draft<Boat>, place: string): ReadonlySet<string> =>
  new Set(ways.filter(({ ends }) => ends.includes(place)).map(({ id }) => id));

/** Takes a place out of the boat with the ways that lead to it; refused while something stands or ends there. */
export const removePlace = defineEdit({
  id: 'remove-place',
  params: z.strictObject({ place: idSchema }),
  title: ({ place }, boat) => {
    const ways = waysAt(boat, place);
    const through = throughInWords(boat, ways);
    const withIt = ways.size === 0 ? '' : `, with ${ways.size === 1 ? 'the way' : `the ${ways.size} ways`} to it`;
    const told = through.length === 0 ? '' : ` Through them ran ${fewInWords(through)}.`;
    return `Remove ${nameInBoat(boat.places, place)}${withIt}.${told}`;
  },
  change: (boat, { place }) => {
    const { name } = findInBoat(boat.places, place, 'place');
    const standing = standingAt(boat, place);
    if (standing.length > 0) {
      throw new UserError({
        says: `${name} cannot go while something is there: ${fewInWords(standing)}.`,
        whatToDo: 'Move that to another place first.',
      });
    }
    takeWaysOut(boat, waysAt(boat, place));
    boat.places = boat.places.filter(({ id }) => id !== place);
    withoutPhotos(boat, (of) => of === place);
    leaveWork(boat, (id) => id === place);
  },
});
