import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';
import { withoutPhotos } from './without-photos.ts';

/** Takes an opening out of the boat, with the photos of it. */
export const removeOpening = defineEdit({
  id: 'remove-opening',
  params: z.strictObject({ opening: idSchema }),
  title: ({ opening }, boat) => `Take the opening ${nameInBoat(boat.openings ?? [], opening)} out of the boat.`,
  change: (boat, { opening }) => {
    const openings = boat.openings ?? [];
    findInBoat(openings, opening, 'opening');
    const left = openings.filter(({ id }) => id !== opening);
    if (left.length > 0) boat.openings = left;
    else delete boat.openings;
    withoutPhotos(boat, (of) => of === opening);
  },
});
