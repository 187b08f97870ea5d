import * as z from 'zod';
import { sheetSchema } from '../sheet.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

/** Puts a whole sheet in the place of the one with its id; every unit by that sheet follows. */
export const setSheet = defineEdit({
  id: 'set-sheet',
  params: z.strictObject({ sheet: sheetSchema }),
  title: ({ sheet }) => `Change the sheet of ${sheet.name}.`,
  change: (boat, { sheet }) => {
    boat.sheets[boat.sheets.indexOf(findInBoat(boat.sheets, sheet.id, 'sheet'))] = sheet;
  },
});
