import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Moves a unit to another place. */
export const moveUnit = defineEdit({
  id: 'move-unit',
  params: z.strictObject({ unit: idSchema, place: idSchema }),
  title: ({ unit, place }, boat) => `Move ${nameInBoat(boat.kit, unit)} to ${nameInBoat(boat.places, place)}.`,
  change: (boat, { unit, place }) => {
    const moved = findInBoat(boat.kit, unit, 'unit');
    moved.place = findInBoat(boat.places, place, 'place').id;
  },
});
