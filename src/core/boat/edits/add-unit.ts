import { typicalSheets } from '../../facts/sheets/index.ts';
import { kitSchema } from '../boat-schema.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

/** Puts a unit aboard, by a sheet of the boat or a typical one, which is copied into the boat: a boat file stands alone. */
export const addUnit = defineEdit({
  id: 'add-unit',
  params: kitSchema,
  title: ({ name, place }) => `Put ${name} at ${place}.`,
  change: (boat, unit) => {
    if (!boat.sheets.some((sheet) => sheet.id === unit.sheet))
      boat.sheets.push(findInBoat(typicalSheets, unit.sheet, 'sheet'));
    boat.kit.push(unit);
  },
});
