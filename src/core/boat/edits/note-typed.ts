import * as z from 'zod';
import { typedSettings } from '../../facts/typed-settings.ts';
import { typedInSchema } from '../measures.ts';
import { sortedBy } from '../sorted-by.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { withoutEmptyLists } from './leave-measures.ts';
import { nameInBoat } from './name-in-boat.ts';

const { unit: unitSchema, what: whatSchema } = typedInSchema.shape;

/** Notes what stands in a unit now, as it was read off it; without `is` nothing is known of it any more. */
export const noteTyped = defineEdit({
  id: 'note-typed',
  params: z.strictObject({
    unit: unitSchema,
    what: whatSchema,
    is: z.exactOptional(typedInSchema.omit({ unit: true, what: true })),
  }),
  title: ({ unit, what, is }, boat) => {
    const where = `${nameInBoat(boat.kit, unit)}, ${typedSettings[what].name}`;
    return is === undefined ? `${where}: not noted.` : `${where}: ${is.figure} ${is.in} stands there.`;
  },
  change: (boat, { unit, what, is }) => {
    findInBoat(boat.kit, unit, 'unit');
    const others = (boat.measures?.typed ?? []).filter((entry) => entry.unit !== unit || entry.what !== what);
    const typed = [...others, ...(is === undefined ? [] : [{ unit, what, ...is }])];
    boat.measures = { ...boat.measures, typed: sortedBy(typed, (entry) => [entry.unit, entry.what]) };
    withoutEmptyLists(boat, 'measures');
  },
});
