import type { Boat, Bus, Kit, Need } from '../boat/boat-schema.ts';
import { freeId } from '../boat/every-id.ts';
import type { EditCall } from '../boat/history.ts';
import type { Sheet } from '../boat/sheet.ts';
import { type UnitWish, unitToPlace } from './unit-to-place.ts';
import { type SheetedUnit, saidBy, sheetedUnits, usualNeedsAt } from './usual-needs-at.ts';

/** A unit that is to come aboard, with all that comes with it, as one step. */
export interface PlacedUnit {
  readonly unit: Kit;
  readonly needs: readonly Need[];
  readonly edits: readonly EditCall[];
  readonly says: string;
}

/** A sheet under the id it has in this boat: its own, unless something else there is called so. */
const sheetAboard = (boat: Boat, sheet: Sheet): { readonly sheet: Sheet; readonly isNew: boolean } => {
  const own = boat.sheets.find(({ id }) => id === sheet.id);
  if (own !== undefined && (own.source === 'typical' || JSON.stringify(own) === JSON.stringify(sheet)))
    return { sheet: own, isNew: false };
  return { sheet: { ...sheet, id: freeId(boat, sheet.id) }, isNew: true };
};

/** The first unit with a bus plug brings the bus. */
const busFor = (boat: Boat, sheet: Sheet): Bus[] =>
  boat.buses.length === 0 && sheet.ports.some(({ protocol }) => protocol === 'nmea2000')
    ? [{ id: freeId(boat, 'backbone'), name: 'Backbone', protocol: 'nmea2000' }]
    : [];

/** What the unit usually needs, and what the screens aboard usually want of the readings it brings. */
const needsWith = (boat: Boat, placed: SheetedUnit): Need[] => {
  const aboard = sheetedUnits(boat);
  const says = new Set(saidBy(placed.sheet));
  const atOthers = aboard.flatMap((other) =>
    usualNeedsAt(other, [placed], boat.needs).filter(({ reading }) => says.has(reading)),
  );
  return [...usualNeedsAt(placed, aboard, boat.needs), ...atOthers];
};

const needCalls = (needs: readonly Need[]): EditCall[] => needs.map((params) => ({ edit: 'add-need', params }));

const saysOf = (boat: Boat, { name, place }: Kit, count: number): string => {
  const where = boat.places.find(({ id }) => id === place)?.name ?? place;
  return `Put ${name} at ${where}${count === 0 ? '' : count === 1 ? ', with one need' : `, with ${count} needs`}.`;
};

/**
 * Puts a unit of a sheet at a place: the unit, the first bus where it has a bus plug and there is none, what it usually
 * needs, and what the screens aboard usually want of what it says. One that goes brings no needs. Pure; one step.
 *
 * `withNeeds`: false leaves every need out.
 */
export const placeUnit = (
  boat: Boat,
  {
    withNeeds = true,
    ...wish
  }: { readonly sheet: Sheet; readonly place: string; readonly withNeeds?: boolean } & UnitWish,
): PlacedUnit => {
  const { sheet, isNew } = sheetAboard(boat, wish.sheet);
  const unit = unitToPlace(boat, { ...wish, sheet });
  const needs = withNeeds && unit.fate !== 'goes' ? needsWith(boat, { unit, sheet }) : [];
  return {
    unit,
    needs,
    edits: [
      ...busFor(boat, sheet).map((params): EditCall => ({ edit: 'add-bus', params })),
      ...(isNew ? [{ edit: 'add-sheet', params: { sheet } } satisfies EditCall] : []),
      { edit: 'add-unit', params: unit },
      ...needCalls(needs),
    ],
    says: saysOf(boat, unit, needs.length),
  };
};
