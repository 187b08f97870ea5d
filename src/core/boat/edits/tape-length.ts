import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { measureSchema } from '../measure.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Puts another length on a way, usually a taped one for a guess. */
export const tapeLength = defineEdit({
  id: 'tape-length',
  params: z.strictObject({ way: idSchema, length: measureSchema }),
  title: ({ way, length }, boat) => {
    const ends = boat.ways.find((entry) => entry.id === way)?.ends.map((end) => nameInBoat(boat.places, end));
    return `${ends === undefined ? way : `From ${ends.join(' to ')}`} it is ${length.valueM} m, ${length.how}.`;
  },
  change: (boat, { way, length }) => {
    findInBoat(boat.ways, way, 'way').length = length;
  },
});
