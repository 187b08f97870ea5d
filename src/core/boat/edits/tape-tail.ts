import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { measureSchema } from '../measure.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Puts another length on the cable from the place of a unit to its plug, usually a taped one for a guess. */
export const tapeTail = defineEdit({
  id: 'tape-tail',
  params: z.strictObject({ unit: idSchema, tail: measureSchema }),
  title: ({ unit, tail }, boat) =>
    `${nameInBoat(boat.kit, unit)}: from its place to its plug it is ${tail.valueM} m, ${tail.how}.`,
  change: (boat, { unit, tail }) => {
    findInBoat(boat.kit, unit, 'unit').tail = tail;
  },
});
