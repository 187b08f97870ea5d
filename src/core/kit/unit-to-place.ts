import type { Boat, Kit } from '../boat/boat-schema.ts';
import { freeId } from '../boat/every-id.ts';
import type { Sheet } from '../boat/sheet.ts';

/** The first part of a name: as far as a comma or "with". */
const firstPart = (name: string): string => name.split(/,| with | from its /)[0]?.trim() ?? name;

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** Where the name of a sheet goes on to what it is not called by: a colon, "with", a comma that begins no list. */
const nameEnds = /:| with | from its |, (?![a-z ,]+ and [a-z ]+$)/;

/**
 * A sheet's name as people say it: without "typical", the network it is for and what it comes with.
 *
 * @example plainSheetName({ name: 'Fixed VHF with DSC and a bus port, 25 W, typical' }) // 'Fixed VHF'
 */
export const plainSheetName = ({ name }: Pick<Sheet, 'name'>): string => {
  const own = name.replace(/, typical$/, '').replace(/,? for (the bus|NMEA 0183)$/, '');
  return capital((own.split(nameEnds)[0] ?? own).replace(/,? for (the bus|NMEA 0183)$/, '').trim());
};

/** The name itself where no unit has it, else with its place, else numbered. */
const freeName = (boat: Boat, name: string, place: string): string => {
  const taken = new Set(boat.kit.map((unit) => unit.name));
  if (!taken.has(name)) return name;
  const where = boat.places.find(({ id }) => id === place)?.name ?? place;
  const atPlace = `${name}, ${firstPart(where)}`;
  if (!taken.has(atPlace)) return atPlace;
  let at = 2;
  while (taken.has(`${atPlace} ${at}`)) at += 1;
  return `${atPlace} ${at}`;
};

/** What a person may say of a unit that is put aboard, beside its sheet and its place. */
export interface UnitWish {
  /** `comes` unless said; `stays` for one that is aboard now */
  readonly fate?: Kit['fate'];
  readonly phase?: number;
  readonly name?: string;
}

/**
 * A unit of a sheet at a place, with an id and a name that nothing in the boat has.
 *
 * @example unitToPlace(boat, { sheet, place: 'helm' }) // { id: 'display', name: '12-inch multifunction display', … }
 */
export const unitToPlace = (
  boat: Boat,
  { sheet, place, fate = 'comes', phase, name }: { readonly sheet: Sheet; readonly place: string } & UnitWish,
): Kit => ({
  // a sheet that the unit brings along takes its id too, though it is not aboard yet
  id: freeId({ ...boat, sheets: [...boat.sheets, sheet] }, sheet.kind),
  name: freeName(boat, name ?? plainSheetName(sheet), place),
  sheet: sheet.id,
  fate,
  ...(phase === undefined || phase === 1 ? {} : { phase }),
  place,
});
