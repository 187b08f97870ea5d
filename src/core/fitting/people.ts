import type { BoatIndex } from '../boat/boat-index.ts';
import type { Place } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { keptFor } from '../boat/kept-for.ts';
import { isAboard, lastPhase } from '../boat/phase.ts';
import { peopleFigures } from '../facts/antenna-figures.ts';
import { acrossM, type Upright } from './upright.ts';

/** Somebody who stands at a place, from sole to head. */
export interface Person extends Upright {
  readonly place: string;
  /** whether the boat file says how high the sole is, or it was taken from what stands in front of a person */
  readonly soleKnown: boolean;
}

const personAt = ({ id, xM, yM, zM, soleZM }: Place): Person => {
  const fromM = soleZM ?? zM - peopleFigures.dashOverSole.value;
  return { place: id, xM, yM, fromM, toM: fromM + peopleFigures.headOverSole.value, soleKnown: soleZM !== undefined };
};

/** Two places so near to each other are one person’s. */
const onePersonM = 0.6;

const isBeside = (one: Person, other: Person): boolean =>
  acrossM(one, other) < onePersonM && Math.abs(one.fromM - other.fromM) < onePersonM;

/** Where people stand for long: where one steers, wherever the boat file gives a sole, and before every display. By place. */
export const peopleAboard = keptFor(({ boat, sheetOf, places }: BoatIndex): readonly Person[] => {
  const last = lastPhase(boat);
  const steered = (boat.steering ?? []).filter(({ by }) => by !== 'emergency-tiller').map(({ place }) => place);
  const soles = boat.places.filter(({ soleZM }) => soleZM !== undefined).map(({ id }) => id);
  const before = boat.kit
    .filter((unit) => isAboard(unit, last) && sheetOf.get(unit.id)?.kind === 'display')
    .map(({ place }) => place);
  const found: Person[] = [];
  for (const id of [steered, soles, before].flatMap((ids) => [...new Set(ids)].sort(byCodeUnit))) {
    const place = places.get(id);
    const person = place === undefined ? undefined : personAt(place);
    if (person !== undefined && !found.some((other) => isBeside(person, other))) found.push(person);
  }
  return found.sort((one, other) => byCodeUnit(one.place, other.place));
});
