import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Says whether tees may stand at a place. */
export const allowTees = defineEdit({
  id: 'allow-tees',
  params: z.strictObject({ place: idSchema, tees: z.boolean() }),
  title: ({ place, tees }, boat) => `${tees ? 'Tees' : 'No tees'} may stand at ${nameInBoat(boat.places, place)}.`,
  change: (boat, { place, tees }) => {
    findInBoat(boat.places, place, 'place').tees = tees;
  },
});
