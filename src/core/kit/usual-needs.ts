import type { Boat, Need } from '../boat/boat-schema.ts';
import { sheetedUnits, usualNeedsAt } from './usual-needs-at.ts';

/** The usual needs of one unit that the boat does not ask for yet; of every unit where none is named. Pure. */
export const usualNeeds = (boat: Boat, unit?: string): Need[] => {
  const aboard = sheetedUnits(boat);
  return aboard
    .filter((one) => unit === undefined || one.unit.id === unit)
    .flatMap((one) => usualNeedsAt(one, aboard, boat.needs));
};
