import type { Boat } from '../boat/boat-schema.ts';
import type { EditCall } from '../boat/history.ts';
import type { PlacedUnit } from './place-unit.ts';
import { plainSheetName, unitToPlace } from './unit-to-place.ts';

/**
 * Another unit of the same sheet at some place, with what differs from the sheet, and with the same needs; its numbers and
 * its identity are its own. Undefined where the boat has no such unit. Pure; one step.
 */
export const copyUnit = (boat: Boat, id: string, place: string): PlacedUnit | undefined => {
  const from = boat.kit.find((unit) => unit.id === id);
  const sheet = boat.sheets.find((entry) => entry.id === from?.sheet);
  if (from === undefined || sheet === undefined) return undefined;
  const { phase, changes } = from;
  const unit = {
    ...unitToPlace(boat, { sheet, place, name: plainSheetName(from), ...(phase === undefined ? {} : { phase }) }),
    ...(changes === undefined ? {} : { changes }),
  };
  const needs = boat.needs.filter(({ at }) => at === id).map((need) => ({ ...need, at: unit.id }));
  const where = boat.places.find((entry) => entry.id === place)?.name ?? place;
  return {
    unit,
    needs,
    edits: [{ edit: 'add-unit', params: unit }, ...needs.map((params): EditCall => ({ edit: 'add-need', params }))],
    says: `Put another ${from.name} at ${where}.`,
  };
};
