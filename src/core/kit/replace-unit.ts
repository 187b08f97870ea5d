import type { Boat, Kit, Need } from '../boat/boat-schema.ts';
import type { EditCall } from '../boat/history.ts';
import type { Sheet } from '../boat/sheet.ts';
import { sheetReadings } from '../readings/sheet-readings.ts';
import { type PlacedUnit, placeUnit } from './place-unit.ts';

/** What was wanted at the old unit is wanted at the new one, as far as that understands it. */
const needsMoved = (boat: Boat, old: Kit, to: Kit, sheet: Sheet): Need[] => {
  const hears = new Set(sheetReadings(sheet).hears);
  return boat.needs
    .filter(({ at, reading }) => at === old.id && hears.has(reading))
    .map((need) => ({ ...need, at: to.id }));
};

/** The hole of the old unit is the new one’s. */
const openingsMoved = ({ openings = [] }: Boat, old: Kit, to: Kit): EditCall[] =>
  openings
    .filter((opening) => opening.for === old.id)
    .map((opening): EditCall => ({ edit: 'set-opening', params: { ...opening, for: to.id } }));

/** A boat without a unit that was only planned, so that another can have its name. */
const without = (boat: Boat, { id }: Kit): Boat => ({
  ...boat,
  kit: boat.kit.filter((unit) => unit.id !== id),
  needs: boat.needs.filter(({ at }) => at !== id),
});

const whichNeed = ({ reading, instance, at }: Need) => ({
  reading,
  ...(instance === undefined ? {} : { instance }),
  at,
});

/**
 * One unit goes and another comes to its place and into its hole, as one step: what was wanted at the old one is wanted at the
 * new one, and what the new one usually needs besides. A unit that is aboard stays in the file as one that goes; one that was only
 * planned is taken out. Both in the phase given, else in that of the old one. Undefined where the boat has no such unit. Pure.
 */
export const replaceUnit = (boat: Boat, id: string, sheet: Sheet, inPhase?: number): PlacedUnit | undefined => {
  const old = boat.kit.find((unit) => unit.id === id);
  if (old === undefined) return undefined;
  const isPlanned = old.fate === 'comes';
  const asked = inPhase ?? old.phase ?? 1;
  const phase = asked === 1 ? {} : { phase: asked };
  // what leaves hears nothing any more, so the newcomer's usual needs are found without it
  const left: Boat = isPlanned
    ? without(boat, old)
    : { ...boat, kit: boat.kit.map((unit) => (unit.id === id ? { ...unit, fate: 'goes' } : unit)) };
  const placed = placeUnit(left, { sheet, place: old.place, ...phase });
  const moved = needsMoved(boat, old, placed.unit, sheet);
  const isMoved = (need: Need): boolean => moved.some(({ reading, at }) => reading === need.reading && at === need.at);
  const needs = [...moved, ...placed.needs.filter((need) => !isMoved(need))];
  const leaves: EditCall[] = isPlanned
    ? [{ edit: 'remove-unit', params: { unit: id } }]
    : [
        { edit: 'set-fate', params: { unit: id, fate: 'goes', ...phase } },
        ...boat.needs
          .filter(({ at }) => at === id)
          .map((need): EditCall => ({ edit: 'remove-need', params: whichNeed(need) })),
      ];
  return {
    unit: placed.unit,
    needs,
    edits: [
      ...leaves,
      ...placed.edits.filter(({ edit }) => edit !== 'add-need'),
      ...needs.map((params): EditCall => ({ edit: 'add-need', params })),
      ...openingsMoved(boat, old, placed.unit),
    ],
    says: `${old.name} ${isPlanned ? 'is left out' : 'goes'}, ${placed.unit.name} comes to the same place.`,
  };
};
