import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { changeSchema } from '../sheet.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

/** Says where one unit differs from its sheet; without a value the entry is taken out for this unit. */
export const changeSheet = defineEdit({
  id: 'change-sheet',
  params: z.strictObject({ unit: idSchema, ...changeSchema.shape }),
  title: ({ unit, path, value }) =>
    value === undefined ? `${unit} has no ${path}.` : `${path} of ${unit} is ${JSON.stringify(value)}.`,
  change: (boat, { unit: id, ...change }) => {
    const unit = findInBoat(boat.kit, id, 'unit');
    unit.changes = [...(unit.changes ?? []).filter(({ path }) => path !== change.path), change];
  },
});
