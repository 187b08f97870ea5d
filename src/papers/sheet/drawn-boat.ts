import type { Boat, Bus, Cable, Kit, Place, Way } from '../../core/boat/boat-schema.ts';
import type { Sheet } from '../../core/boat/sheet.ts';
import { applyChanges } from '../../core/boat/sheet-changes.ts';

/**
 * What a drawing looks up in a boat. Core's own index knows more, and with it the tables of messages and the schema,
 * which the page that draws has no use for.
 */
export interface DrawnBoat {
  readonly boat: Boat;
  readonly places: ReadonlyMap<string, Place>;
  readonly ways: ReadonlyMap<string, Way>;
  readonly cables: ReadonlyMap<string, Cable>;
  readonly kit: ReadonlyMap<string, Kit>;
  readonly buses: ReadonlyMap<string, Bus>;
  /** sheet by kit id, with the unit's own changes applied */
  readonly sheetOf: ReadonlyMap<string, Sheet>;
}

const byId = <Entry extends { readonly id: string }>(entries: readonly Entry[]): ReadonlyMap<string, Entry> =>
  new Map(entries.map((entry) => [entry.id, entry]));

const sheetsByUnit = (boat: Boat): ReadonlyMap<string, Sheet> => {
  const sheets = byId(boat.sheets);
  return new Map(
    boat.kit.flatMap((unit): [string, Sheet][] => {
      const sheet = sheets.get(unit.sheet);
      return sheet === undefined ? [] : [[unit.id, applyChanges(sheet, unit.changes ?? [])]];
    }),
  );
};

/** Finds what is drawn of a boat by id. */
export const drawnBoat = (boat: Boat): DrawnBoat => ({
  boat,
  places: byId(boat.places),
  ways: byId(boat.ways),
  cables: byId(boat.cables),
  kit: byId(boat.kit),
  buses: byId(boat.buses),
  sheetOf: sheetsByUnit(boat),
});
