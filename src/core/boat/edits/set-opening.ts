import { openingSchema } from '../opening.ts';
import { defineEdit } from './define-edit.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Puts an opening into the boat, in place of one with the same id. */
export const setOpening = defineEdit({
  id: 'set-opening',
  params: openingSchema,
  title: ({ name, place, hole: { widthMm, heightMm } }, boat) =>
    `The opening ${name} at ${nameInBoat(boat.places, place)}: ${widthMm} × ${heightMm} mm.`,
  change: (boat, opening) => {
    boat.openings = [...(boat.openings ?? []).filter(({ id }) => id !== opening.id), opening];
  },
});
