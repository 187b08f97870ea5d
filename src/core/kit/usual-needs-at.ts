import { indexBoat } from '../boat/boat-index.ts';
import type { Boat, Kit, Need } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Sheet } from '../boat/sheet.ts';
import { numberedReadings } from '../facts/numbered-readings.ts';
import { type ReadingId, readingIds } from '../facts/reading-ids.ts';
import { usualNeedsOf } from '../facts/usual-needs.ts';
import { sheetReadings } from '../readings/sheet-readings.ts';

/** A unit with its sheet as that unit has it. */
export interface SheetedUnit {
  readonly unit: Kit;
  readonly sheet: Sheet;
}

/** The units of a boat that are aboard when the refit is done, by id. */
export const sheetedUnits = (boat: Boat): SheetedUnit[] => {
  const { sheetOf } = indexBoat(boat);
  return boat.kit
    .filter(({ fate }) => fate !== 'goes')
    .flatMap((unit) => {
      const sheet = sheetOf.get(unit.id);
      return sheet === undefined ? [] : [{ unit, sheet }];
    })
    .sort((a, b) => byCodeUnit(a.unit.id, b.unit.id));
};

/** What a unit says to others; what an antenna brings to its own radio is no reading for a screen yet. */
export const saidBy = (sheet: Sheet): readonly ReadingId[] =>
  sheetReadings({ ...sheet, ports: sheet.ports.filter(({ protocol }) => protocol !== 'coax') }).says;

/** Numbers under which the others say a reading, where it is one of several that are told apart by number. */
const numbersOf = (others: readonly SheetedUnit[], reading: ReadingId): number[] => {
  if (!numberedReadings.has(reading)) return [];
  const own = others.flatMap(({ unit }) =>
    (unit.instances ?? []).flatMap((entry) => (entry.reading === reading ? [entry.instance] : [])),
  );
  const said = others.flatMap(({ sheet }) =>
    sheet.ports.flatMap(({ sends = [] }) =>
      sends.flatMap((entry) => (entry.reading === reading && entry.instance !== undefined ? [entry.instance] : [])),
    ),
  );
  return [...new Set([...own, ...said])].sort((a, b) => a - b);
};

/**
 * What a unit is usually wanted to show or needs to work, as far as its sheet understands it: what it is of no use
 * without, and of the rest what some other unit says. Readings of which there are several by number are wanted each.
 * Whatever the boat asks for there already is left out. Pure; in the order of the readings.
 *
 * `others`: units that may say something; the unit itself is none of them.
 */
export const usualNeedsAt = (
  { unit, sheet }: SheetedUnit,
  others: readonly SheetedUnit[],
  asked: readonly Need[],
): Need[] => {
  const usual = usualNeedsOf(sheet.kind);
  if (usual === undefined) return [];
  const hears = new Set(sheetReadings(sheet).hears);
  const said = new Set(others.filter((one) => one.unit.id !== unit.id).flatMap((one) => saidBy(one.sheet)));
  const wants = (reading: ReadingId): 'must' | 'wish' | undefined => {
    if (usual.must.includes(reading)) return 'must';
    if (!said.has(reading)) return undefined;
    if (usual.mustIfSaid.includes(reading)) return 'must';
    return usual.wishIfSaid.includes(reading) ? 'wish' : undefined;
  };
  const has = (reading: ReadingId): boolean => asked.some((need) => need.at === unit.id && need.reading === reading);
  return readingIds.flatMap((reading): Need[] => {
    const want = wants(reading);
    if (want === undefined || !hears.has(reading) || has(reading)) return [];
    const numbers = numbersOf(others, reading);
    const need: Need = { reading, at: unit.id, must: want === 'must' };
    return numbers.length > 1 ? numbers.map((instance) => ({ ...need, instance })) : [need];
  });
};
