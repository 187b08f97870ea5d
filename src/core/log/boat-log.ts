import { byCodeUnit } from '../boat/ids.ts';
import type { EntryOf, LogEntry } from './log-entry.ts';

/** What the log of a boat comes to: the latest of each thing, whatever the order and however often its lines came. */
export interface BoatLog {
  /** by test, the latest */
  readonly readings: ReadonlyMap<string, EntryOf<'reading'>>;
  /** by what is ticked, the latest */
  readonly ticks: ReadonlyMap<string, EntryOf<'tick'>>;
  /** in the order they were written */
  readonly notes: readonly EntryOf<'note'>[];
  /** all that stand, in the order they were written */
  readonly entries: readonly LogEntry[];
}

/** By the moment written; of one moment by id, so that every reader finds the same order. */
const inOrder = (one: LogEntry, other: LogEntry): number =>
  byCodeUnit(one.at, other.at) || byCodeUnit(one.id, other.id);

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
    readings: new Map(standing.flatMap((entry) => (entry.kind === 'reading' ? [[entry.test, entry]] : []))),
    ticks: new Map(standing.flatMap((entry) => (entry.kind === 'tick' ? [[entry.of, entry]] : []))),
    notes: standing.flatMap((entry) => (entry.kind === 'note' ? [entry] : [])),
    entries: standing,
  };
};

/** A log in which nothing stands yet. */
export const emptyLog: BoatLog = boatLog([]);
