import * as z from 'zod';
import { kitSchema } from '../boat-schema.ts';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Gives a unit another name; its id stays, so that everything that speaks of it still does. */
export const nameUnit = defineEdit({
  id: 'name-unit',
  params: z.strictObject({ unit: idSchema, ...kitSchema.pick({ name: true }).shape }),
  title: ({ unit, name }, boat) => `Call ${nameInBoat(boat.kit, unit)} ${name}.`,
  change: (boat, { unit, name }) => {
    findInBoat(boat.kit, unit, 'unit').name = name;
  },
});
