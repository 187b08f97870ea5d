import * as z from 'zod';
import { sheetSchema } from '../sheet.ts';
import { defineEdit } from './define-edit.ts';

/** Brings a sheet into the boat, for units to be made by it. */
export const addSheet = defineEdit({
  id: 'add-sheet',
  params: z.strictObject({ sheet: sheetSchema }),
  title: ({ sheet }) => `Take the sheet of ${sheet.name} into the boat.`,
  change: (boat, { sheet }) => {
    boat.sheets.push(sheet);
  },
});
