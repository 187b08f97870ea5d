import type { Boat, Place } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Port, Sheet } from '../boat/sheet.ts';
import { usualPlaceOf } from '../facts/usual-places.ts';

type PlacedBoat = Pick<Boat, 'places' | 'kit' | 'sheets'>;

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
  tooFarPerM: -12,
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
const alikeScore = ({ kit, sheets }: PlacedBoat, place: Place, kind: string): number => {
  const kinds = new Map(sheets.map((sheet) => [sheet.id, sheet.kind]));
  const there = kit.filter((unit) => unit.place === place.id && kinds.get(unit.sheet) === kind);
  const others = there.filter(({ fate }) => fate !== 'goes').length;
  return (there.length > others ? worth.leaves : 0) + worth.alike * others;
};

/** The length to be had for a way is so many times the straight line: detours, and the doubt of what nobody has taped. */
const wayPerStraight = 2.4;

const listensToEach = (one: Port, other: Port): boolean => {
  const says = new Set((one.sends ?? []).map(({ reading }) => reading));
  return (
    one.protocol === other.protocol &&
    (other.hears ?? []).some(({ reading }) => reading !== undefined && says.has(reading))
  );
};

/** The length of a lead of a sheet that may not be made longer, by the port on it. */
const leadsOf = ({ plugs, ports }: Sheet): { readonly port: Port; readonly leadM: number }[] =>
  plugs.flatMap(({ id, fixedLead, mayExtend }) =>
    fixedLead === undefined || mayExtend === true
      ? []
      : ports.filter(({ onPlug }) => onPlug === id).map((port) => ({ port, leadM: fixedLead.valueM })),
  );

/** How far beyond its lead a unit would stand from the nearest unit that the lead is for, m. */
const tooFarM = ({ kit, sheets, places }: PlacedBoat, sheet: Sheet): ((place: Place) => number) => {
  const sheetOf = new Map(sheets.map((one) => [one.id, one]));
  const placeOf = new Map(places.map((one) => [one.id, one]));
  const mates = leadsOf(sheet).map(({ port, leadM }) => ({
    leadM,
    at: kit
      .filter(({ fate }) => fate !== 'goes')
      .filter((unit) => sheetOf.get(unit.sheet)?.ports.some((own) => listensToEach(port, own)))
      .flatMap((unit) => placeOf.get(unit.place) ?? []),
  }));
  return ({ xM, yM, zM }) =>
    mates.reduce((sum, { leadM, at }) => {
      const wayM = Math.min(...at.map((mate) => Math.hypot(xM - mate.xM, yM - mate.yM, zM - mate.zM))) * wayPerStraight;
      return at.length === 0 ? sum : sum + Math.max(0, wayM - leadM);
    }, 0);
};

/**
 * The places of a boat, the likeliest for a unit of a sheet first: where one of its kind leaves, else by the name of the
 * place, by what it is exposed to, by its height, and within reach of its lead where that may not be made longer. A person
 * chooses among them. Pure; equal ones by id.
 *
 * @example likelyPlaces(boat, windSensor)[0] // the masthead
 */
export const likelyPlaces = (boat: PlacedBoat, sheet: Sheet): readonly Place[] => {
  const { kind } = sheet;
  const usual = usualPlaceOf(kind);
  const beyondM = tooFarM(boat, sheet);
  const scoreOf = (place: Place): number => {
    const exposed = usual.exposures.indexOf(place.exposure);
    return (
      alikeScore(boat, place, kind) +
      worth.tooFarPerM * beyondM(place) +
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
