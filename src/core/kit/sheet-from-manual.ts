import { canonicalJson } from '../backbone/canonical-json.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { freeId } from '../boat/every-id.ts';
import type { EditCall } from '../boat/history.ts';
import type { Sheet } from '../boat/sheet.ts';
import { tidySheet } from './tidy-sheet.ts';
import { plainSheetName } from './unit-to-place.ts';

/** A sheet that was edited for some units, as one step. */
export interface EditedSheet {
  /** as it stands in the boat afterwards */
  readonly sheet: Sheet;
  readonly edits: readonly EditCall[];
  readonly says: string;
}

/** Whether two sheets say the same, in whatever order. */
export const isSameSheet = (one: Sheet, other: Sheet): boolean => canonicalJson(one) === canonicalJson(other);

/** Without what says that it is of no maker. */
const asOfManual = (sheet: Sheet, id: string): Sheet => ({
  ...sheet,
  id,
  name: sheet.name.replace(/, typical$/, ''),
  source: 'manual',
});

/**
 * A sheet as somebody filled it in from the manual, for one unit or for all units of the sheet. A sheet of the manual is
 * changed where it stands; of any other the units get a copy of their own, so that what is typical stays so. Undefined
 * where the boat has no such unit, or nothing was changed. Pure; one step.
 */
export const sheetFromManual = (
  boat: Boat,
  { unit: id, draft: given, forAll }: { readonly unit: string; readonly draft: Sheet; readonly forAll: boolean },
): EditedSheet | undefined => {
  const unit = boat.kit.find((one) => one.id === id);
  const old = boat.sheets.find((sheet) => sheet.id === unit?.sheet);
  if (unit === undefined || old === undefined) return undefined;
  const draft = tidySheet(given);
  if (isSameSheet({ ...draft, id: old.id }, tidySheet(old))) return undefined;
  const alike = boat.kit.filter(({ sheet }) => sheet === old.id).map((one) => one.id);
  const units = forAll ? alike : [id];
  const says = `The sheet of ${units.length === 1 ? unit.name : plainSheetName(old)} from its manual.`;
  if (old.source === 'manual' && units.length === alike.length) {
    const sheet = asOfManual(draft, old.id);
    return { sheet, edits: [{ edit: 'set-sheet', params: { sheet } }], says };
  }
  const sheet = asOfManual(draft, freeId(boat, `${unit.id}-sheet`));
  return {
    sheet,
    edits: [
      { edit: 'copy-sheet', params: { units, as: sheet.id } },
      { edit: 'set-sheet', params: { sheet } },
    ],
    says,
  };
};
