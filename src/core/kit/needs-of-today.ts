import { type BoatIndex, indexBoat } from '../boat/boat-index.ts';
import type { Boat, Kit, Need } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { type ReadingId, readingIds } from '../facts/reading-ids.ts';
import { usualNeedsOf } from '../facts/usual-needs.ts';
import type { SeenEntry } from '../plan-shape.ts';
import { isScreen } from '../readings/before-and-after.ts';
import { sheetReadings } from '../readings/sheet-readings.ts';

/** Distance between the places of two units, m; far where one has none. */
const awayM = (index: BoatIndex, a: Kit, b: Kit): number => {
  const [from, to] = [index.places.get(a.place), index.places.get(b.place)];
  if (from === undefined || to === undefined) return Number.POSITIVE_INFINITY;
  return Math.hypot(from.xM - to.xM, from.yM - to.yM, from.zM - to.zM);
};

const hears = (index: BoatIndex, { id }: Kit, reading: ReadingId): boolean => {
  const sheet = index.sheetOf.get(id);
  return sheet !== undefined && sheetReadings(sheet).hears.includes(reading);
};

/** The screen that takes over from one that goes: the nearest of those that come or stay and understand the reading. */
const heirOf = (index: BoatIndex, old: Kit, reading: ReadingId): Kit | undefined =>
  index.boat.kit
    .filter((unit) => unit.fate !== 'goes' && isScreen(index, unit.id) && hears(index, unit, reading))
    .sort((a, b) => awayM(index, old, a) - awayM(index, old, b) || byCodeUnit(a.id, b.id))[0];

/** Whether somebody wants it there: people read it, or the unit does not work without it. */
const counts = (index: BoatIndex, { at, reading }: SeenEntry): boolean =>
  isScreen(index, at) || (usualNeedsOf(index.sheetOf.get(at)?.kind ?? '')?.must.includes(reading) ?? false);

/**
 * What the screens show today, as musts that the boat does not ask for yet: at the same screen where it stays, else at the
 * nearest one that understands the reading. What nothing aboard will understand is left out. Pure.
 *
 * `before`: what every unit heard before the refit, as the plan has it.
 */
export const needsOfToday = (boat: Boat, before: readonly SeenEntry[]): Need[] => {
  const index = indexBoat(boat);
  const keyOf = ({ reading, instance, at }: Need): string => `${reading} ${instance ?? ''} ${at}`;
  const asked = new Set(boat.needs.map(keyOf));
  const found = before
    .filter((entry) => counts(index, entry))
    .flatMap(({ reading, instance, at }): Need[] => {
      const old = index.kit.get(at);
      const heir = old?.fate === 'goes' ? heirOf(index, old, reading) : old;
      if (heir === undefined) return [];
      return [{ reading, ...(instance === undefined ? {} : { instance }), at: heir.id, must: true }];
    })
    .filter((need) => !asked.has(keyOf(need)));
  return [...new Map(found.map((need) => [keyOf(need), need])).values()].sort(
    (a, b) => readingIds.indexOf(a.reading) - readingIds.indexOf(b.reading) || byCodeUnit(keyOf(a), keyOf(b)),
  );
};
