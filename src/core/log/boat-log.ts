import { byCodeUnit } from '../units/by-code-unit.ts';
import type { EntryOf, LogEntry } from './log-entry.ts';

/** What the log of a boat comes to: the latest of each thing, whatever the order and however often its lines came. */
export interface BoatLog {
  /** by test, the latest */
  readonly readings: ReadonlyMap<string, EntryOf<'reading'>>;
  /** by what is ticked, the latest */
  readonly ticks: ReadonlyMap<string, EntryOf<'tick'>>;
  /** by way or unit, the latest */
  readonly measures: ReadonlyMap<string, EntryOf<'measure'>>;
  /** by place or way, the latest */
  readonly seen: ReadonlyMap<string, EntryOf<'seen'>>;
  /** by unit, the latest */
  readonly aboard: ReadonlyMap<string, EntryOf<'aboard'>>;
  /** in the order they were written */
  readonly photos: readonly EntryOf<'photo'>[];
  /** in the order they were written */
  readonly notes: readonly EntryOf<'note'>[];
  /** all that stand, in the order they were written */
  readonly entries: readonly LogEntry[];
}

/** A moment with its milliseconds, so that moments with and without them stand in their order. */
const toMillisecond = (at: string): string => (at.includes('.') ? at : at.replace('Z', '.000Z'));

/** By the moment written; of one moment by id, so that every reader finds the same order. */
const inOrder = (one: LogEntry, other: LogEntry): number =>
  byCodeUnit(toMillisecond(one.at), toMillisecond(other.at)) || byCodeUnit(one.id, other.id);

/** The entries of one kind by what they are of; of several of one thing the last. */
const latest = <Kind extends LogEntry['kind']>(
  standing: readonly LogEntry[],
  kind: Kind,
  of: (entry: EntryOf<Kind>) => string,
): ReadonlyMap<string, EntryOf<Kind>> =>
  new Map(allOf(standing, kind).map((entry): [string, EntryOf<Kind>] => [of(entry), entry]));

const allOf = <Kind extends LogEntry['kind']>(standing: readonly LogEntry[], kind: Kind): EntryOf<Kind>[] =>
  // reason: the compiler cannot see that an entry of a kind is one of that kind
  standing.filter((entry) => entry.kind === kind) as EntryOf<Kind>[];

/**
 * Puts a log together. Entries may have come twice, late and in any order, from several who wrote at once: the same set of
 * lines always comes to the same.
 */
export const boatLog = (entries: readonly LogEntry[]): BoatLog => {
  const byId = new Map<string, LogEntry>();
  // of two with one id, which only a fault can write, the first in order counts
  for (const entry of [...entries].sort(inOrder)) if (!byId.has(entry.id)) byId.set(entry.id, entry);
  const withdrawn = new Set([...byId.values()].flatMap((entry) => (entry.kind === 'withdrawn' ? [entry.entry] : [])));
  const standing = [...byId.values()].filter(({ id, kind }) => kind !== 'withdrawn' && !withdrawn.has(id));
  return {
    readings: latest(standing, 'reading', ({ test }) => test),
    ticks: latest(standing, 'tick', ({ of }) => of),
    measures: latest(standing, 'measure', ({ of }) => of),
    seen: latest(standing, 'seen', ({ of }) => of),
    aboard: latest(standing, 'aboard', ({ of }) => of),
    photos: allOf(standing, 'photo'),
    notes: allOf(standing, 'note'),
    entries: standing,
  };
};

/** A log in which nothing stands yet. */
export const emptyLog: BoatLog = boatLog([]);
