import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { changeSchema } from '../sheet.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Says anew in all how one unit differs from its sheet; without any change it is as its sheet has it. */
export const setChanges = defineEdit({
  id: 'set-changes',
  params: z.strictObject({ unit: idSchema, changes: z.array(changeSchema) }),
  title: ({ unit, changes }, boat) =>
    changes.length === 0
      ? `${nameInBoat(boat.kit, unit)} is as its sheet has it.`
      : `${nameInBoat(boat.kit, unit)} differs from its sheet.`,
  change: (boat, { unit: id, changes }) => {
    const unit = findInBoat(boat.kit, id, 'unit');
    if (changes.length === 0) delete unit.changes;
    else unit.changes = changes;
  },
});
