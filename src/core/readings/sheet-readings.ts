import type { Sheet } from '../boat/sheet.ts';
import { type ReadingId, readingIds } from '../facts/reading-ids.ts';
import { bareAt, carriedAt, givenAt, heardAt } from './port-messages.ts';

/** What a unit of one sheet can say and hear at all its ports, each in the order of the readings. */
export interface SheetReadings {
  readonly says: readonly ReadingId[];
  readonly hears: readonly ReadingId[];
}

/**
 * The readings that a sheet's ports say and hear, by the rules that `arrivals` has for a unit aboard: what a message may
 * carry but seldom does counts only where the sheet says so.
 *
 * @example sheetReadings(rudderSensor) // { says: ['rudder'], hears: [] }
 */
export const sheetReadings = (sheet: Sheet): SheetReadings => {
  const given = sheet.ports.map((port) => givenAt(port, new Set([...bareAt(port), ...carriedAt(sheet, port)])));
  const heard = sheet.ports.map(heardAt);
  return {
    says: readingIds.filter((reading) => given.some((at) => at.has(reading))),
    hears: readingIds.filter((reading) => heard.some((at) => at.has(reading))),
  };
};
