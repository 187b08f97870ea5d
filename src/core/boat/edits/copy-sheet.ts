import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { sheetSchema } from '../sheet.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

/**
 * Gives some units of one sheet a copy of it that is their own, to be filled in from the maker's manual. Where they
 * differ from it stays said at each of them.
 */
export const copySheet = defineEdit({
  id: 'copy-sheet',
  params: z.strictObject({
    units: z.array(idSchema).min(1),
    /** id of the copy */
    as: idSchema,
    ...sheetSchema.pick({ name: true, sourceNote: true }).partial().shape,
  }),
  title: ({ units, as }) => `${units.join(', ')}: a sheet of its own, ${as}.`,
  change: (boat, { units, as, name, sourceNote }) => {
    const own = units.map((id) => findInBoat(boat.kit, id, 'unit'));
    const [first] = new Set(own.map(({ sheet }) => sheet));
    if (first === undefined || own.some(({ sheet }) => sheet !== first))
      throw new UserError({
        says: 'These units are not of one sheet.',
        whatToDo: 'Give a copy to units of the same sheet only.',
      });
    const { sourceNote: _, ...sheet } = findInBoat(boat.sheets, first, 'sheet');
    boat.sheets.push({
      ...sheet,
      id: as,
      name: name ?? sheet.name,
      source: 'manual',
      ...(sourceNote === undefined ? {} : { sourceNote }),
    });
    for (const unit of own) unit.sheet = as;
  },
});
