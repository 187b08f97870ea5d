import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Says at which place all negatives of the boat meet. */
export const setNegative = defineEdit({
  id: 'set-negative',
  params: z.strictObject({ place: idSchema }),
  title: ({ place }, boat) => `All negatives meet at ${nameInBoat(boat.places, place)}.`,
  change: (boat, { place }) => {
    boat.supply.negativeAt = place;
  },
});
