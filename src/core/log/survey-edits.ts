import type { Boat } from '../boat/boat-schema.ts';
import type { EditCall } from '../boat/history.ts';
import type { Measure } from '../boat/measure.ts';
import { answerEdit } from '../walk-round/answer-edits.ts';
import type { BoatLog } from './boat-log.ts';
import type { EntryOf } from './log-entry.ts';

/** An entry that says how the boat was found. */
export type SurveyEntry = EntryOf<'measure' | 'seen' | 'aboard' | 'photo'>;

/** What was found aboard otherwise than the boat file has it, and the edit that takes it over; none where a person must. */
export interface OfferedEntry {
  readonly entry: SurveyEntry;
  readonly edit?: EditCall;
}

/** The id under which the log keeps that an entry was left as it is, for good. */
export const leftTickId = (entry: string): string => `survey/${entry}`;

const offered = (entry: SurveyEntry, edit: EditCall | undefined): OfferedEntry[] =>
  edit === undefined ? [] : [{ entry, edit }];

const ofMeasure = ({ ways, kit }: Boat, entry: EntryOf<'measure'>): OfferedEntry[] => {
  const { of, valueM, how } = entry;
  const isHeld = (held: Measure | undefined): boolean => held?.valueM === valueM && held.how === how;
  const way = ways.find(({ id }) => id === of);
  if (way !== undefined && !isHeld(way.length))
    return offered(entry, { edit: 'tape-length', params: { way: of, length: { valueM, how } } });
  const unit = kit.find(({ id }) => id === of);
  if (unit !== undefined && !isHeld(unit.tail))
    return offered(entry, { edit: 'tape-tail', params: { unit: of, tail: { valueM, how } } });
  return [];
};

const ofSeen = ({ places, ways }: Boat, entry: EntryOf<'seen'>): OfferedEntry[] => {
  const place = places.find(({ id }) => id === entry.of);
  const way = ways.find(({ id }) => id === entry.of);
  if (place === undefined && way === undefined) return [];
  if (entry.is === 'not') return [{ entry }];
  if (place !== undefined) {
    return place.seen === true ? [] : offered(entry, answerEdit({ kind: 'place-is-so', place: place.id }));
  }
  const known = entry.is === 'pulled' ? 'pulled' : 'seen';
  // a way through which a line was pulled was seen as well
  const isKnown = way === undefined || way.known === known || way.known === 'pulled';
  return isKnown ? [] : offered(entry, answerEdit({ kind: 'way-seen', way: way.id, known }));
};

const ofAboard = ({ kit }: Boat, entry: EntryOf<'aboard'>): OfferedEntry[] => {
  const unit = kit.find(({ id }) => id === entry.of);
  if (unit === undefined) return [];
  const { serial, software } = entry;
  const found = {
    ...(serial === undefined || serial === unit.aboard?.serial ? {} : { serial }),
    ...(software === undefined || software === unit.aboard?.software ? {} : { software }),
  };
  return Object.keys(found).length === 0
    ? []
    : offered(entry, { edit: 'note-aboard', params: { unit: unit.id, ...found } });
};

const photographable = ({ places, ways, kit, supply, openings = [] }: Boat): ReadonlySet<string> =>
  new Set([...places, ...ways, ...kit, ...supply.banks, ...supply.panels, ...openings].map(({ id }) => id));

const ofPhoto = ({ photos = [] }: Boat, entry: EntryOf<'photo'>): OfferedEntry[] => {
  const { of, shows, picture } = entry;
  const isHeld = photos.some((one) => one.of === of && one.shows === shows && one.picture.hash === picture.hash);
  return isHeld ? [] : offered(entry, answerEdit({ kind: 'photos', photo: { of, shows, picture } }));
};

/**
 * What the log has of how the boat was found and her file has not: the latest length, look and label of each thing, and every
 * photo, in the order they were written. What the file says already is not offered, whoever wrote it there; nor what somebody
 * said to leave. Pure.
 */
export const offeredEntries = (boat: Boat, log: BoatLog): OfferedEntry[] => {
  const canBePhotographed = photographable(boat);
  const all = new Map(
    [
      ...[...log.measures.values()].flatMap((entry) => ofMeasure(boat, entry)),
      ...[...log.seen.values()].flatMap((entry) => ofSeen(boat, entry)),
      ...[...log.aboard.values()].flatMap((entry) => ofAboard(boat, entry)),
      ...log.photos.filter(({ of }) => canBePhotographed.has(of)).flatMap((entry) => ofPhoto(boat, entry)),
    ].map((one) => [one.entry.id, one]),
  );
  return log.entries.flatMap(({ id }) => {
    const one = all.get(id);
    return one === undefined || log.ticks.get(leftTickId(id))?.done === true ? [] : [one];
  });
};
