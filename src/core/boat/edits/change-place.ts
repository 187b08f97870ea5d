import * as z from 'zod';
import { placeSchema } from '../boat-schema.ts';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

const { name, exposure, reach, tees, spares, soleZM, seen, counted } = placeSchema.shape;

const reachWords = { open: 'open', panel: 'behind a panel', hard: 'hard to reach', aloft: 'aloft' } as const;

/** Changes what is said of a place, but for where it is; what is left out stays. No spares take the wish for them out. */
export const changePlace = defineEdit({
  id: 'change-place',
  params: z.strictObject({
    place: idSchema,
    name: z.exactOptional(name),
    exposure: z.exactOptional(exposure),
    reach: z.exactOptional(reach),
    tees: z.exactOptional(tees),
    spares,
    soleZM,
    seen,
    counted,
  }),
  title: (wanted, boat) => {
    const facts = [
      ...(wanted.name === undefined ? [] : [`called ${wanted.name}`]),
      ...(wanted.exposure === undefined ? [] : [wanted.exposure]),
      ...(wanted.reach === undefined ? [] : [reachWords[wanted.reach]]),
      ...(wanted.tees === undefined ? [] : [wanted.tees ? 'tees may stand there' : 'no tees stand there']),
      ...(wanted.spares === undefined ? [] : [`${wanted.spares} spare ${wanted.spares === 1 ? 'tee' : 'tees'}`]),
      ...(wanted.soleZM === undefined ? [] : [`its sole ${wanted.soleZM} m over the water`]),
      ...(wanted.seen === undefined ? [] : [wanted.seen ? 'seen' : 'not seen']),
      ...(wanted.counted === undefined ? [] : [wanted.counted ? 'nothing else is there' : 'not all there is known']),
    ];
    return `Change ${nameInBoat(boat.places, wanted.place)}: ${facts.join(', ')}.`;
  },
  change: (boat, { place, ...wanted }) => {
    const found = findInBoat(boat.places, place, 'place');
    Object.assign(found, wanted);
    if (found.spares === 0) delete found.spares;
  },
});
