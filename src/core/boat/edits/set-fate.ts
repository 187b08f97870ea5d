import * as z from 'zod';
import { kitSchema } from '../boat-schema.ts';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Says whether a unit stays, goes or comes, and in which phase; without a phase it is the first. */
export const setFate = defineEdit({
  id: 'set-fate',
  params: z.strictObject({ unit: idSchema, ...kitSchema.pick({ fate: true, phase: true }).shape }),
  title: ({ unit, fate, phase }, boat) =>
    `${nameInBoat(boat.kit, unit)} ${fate}${phase === undefined ? '' : ` in phase ${phase}`}.`,
  change: (boat, { unit, fate, phase }) => {
    const found = findInBoat(boat.kit, unit, 'unit');
    found.fate = fate;
    if (phase === undefined) delete found.phase;
    else found.phase = phase;
  },
});
