import type { Boat, Place } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Sheet } from '../boat/sheet.ts';
import { usualPlaceOf } from '../facts/usual-places.ts';
import { type BeyondLead, beyondLead } from './beyond-lead.ts';

/** How much each sign counts that a unit belongs at a place. */
const worth = {
  leaves: 40,
  alike: -12,
  firstWord: 24,
  word: 3,
  exposure: 12,
  height: 16,
  reach: 10,
  not: -30,
  outOfReach: -40,
  perhapsTooFarPerM: -8,
} as const;

/** Share of the way up, or down, that a place lies among all: 1 for the one that is right. */
const heightShare = (places: readonly Place[], { zM }: Place, height: 'high' | 'low'): number => {
  const all = places.map((place) => place.zM);
  const [lowestM, highestM] = [Math.min(...all), Math.max(...all)];
  const up = highestM === lowestM ? 0 : (zM - lowestM) / (highestM - lowestM);
  return height === 'high' ? up : 1 - up;
};

const wordsOf = ({ id, name }: Place): ReadonlySet<string> => new Set(`${id} ${name}`.toLowerCase().split(/[^a-z]+/));

const wordScore = (place: Place, words: readonly string[]): number => {
  const own = wordsOf(place);
  const at = words.findIndex((word) => own.has(word));
  return at < 0 ? 0 : Math.max(worth.word, worth.firstWord - worth.word * at);
};

/** One that leaves makes room where it stands; one that is there already would rather have another beside it elsewhere. */
const alikeScore = ({ kit, sheets }: Boat, place: Place, kind: string): number => {
  const kinds = new Map(sheets.map((sheet) => [sheet.id, sheet.kind]));
  const there = kit.filter((unit) => unit.place === place.id && kinds.get(unit.sheet) === kind);
  const others = there.filter(({ fate }) => fate !== 'goes').length;
  return (there.length > others ? worth.leaves : 0) + worth.alike * others;
};

/** A lead that cannot reach is a fault whatever else speaks for a place; one that may not reach is a doubt that grows. */
const reachScore = ({ surelyM, perhapsM }: BeyondLead): number =>
  (surelyM > 0 ? worth.outOfReach : 0) + worth.perhapsTooFarPerM * perhapsM;

/**
 * The places of a boat, the likeliest for a unit of a sheet first: where one of its kind leaves, else by the name of the
 * place, by what it is exposed to, by its height, and within reach of its lead where that may not be made longer. A person
 * chooses among them. Pure; equal ones by id.
 *
 * @example likelyPlaces(boat, windSensor)[0] // the masthead
 */
export const likelyPlaces = (boat: Boat, sheet: Sheet): readonly Place[] => {
  const { kind } = sheet;
  const usual = usualPlaceOf(kind);
  const beyondOf = beyondLead(boat, sheet);
  const scoreOf = (place: Place): number => {
    const exposed = usual.exposures.indexOf(place.exposure);
    return (
      alikeScore(boat, place, kind) +
      reachScore(beyondOf(place)) +
      wordScore(place, usual.words) +
      (exposed < 0 ? -worth.exposure : worth.exposure - exposed) +
      (usual.isUsed === true && place.reach === 'open' ? worth.reach : 0) +
      ((usual.not ?? []).some((word) => wordsOf(place).has(word)) ? worth.not : 0) +
      (usual.height === undefined ? 0 : worth.height * heightShare(boat.places, place, usual.height))
    );
  };
  const scores = new Map(boat.places.map((place) => [place.id, scoreOf(place)]));
  const scoreAt = ({ id }: Place): number => scores.get(id) ?? 0;
  return [...boat.places].sort((a, b) => scoreAt(b) - scoreAt(a) || byCodeUnit(a.id, b.id));
};
