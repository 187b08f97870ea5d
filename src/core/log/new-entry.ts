import type { BoatLog } from './boat-log.ts';
import type { LogEntry } from './log-entry.ts';

/** An entry before it has an id and a moment. */
export type NewEntry = {
  [Kind in LogEntry['kind']]: Omit<Extract<LogEntry, { kind: Kind }>, 'id' | 'at'>;
}[LogEntry['kind']];

/** The entry that counts for the same thing so far; absent where a new one stands beside the others, or is the first. */
const stoodBefore = (log: BoatLog, entry: NewEntry): LogEntry | undefined => {
  switch (entry.kind) {
    case 'reading':
      return log.readings.get(entry.test);
    case 'tick':
      return log.ticks.get(entry.of);
    case 'measure':
      return log.measures.get(entry.of);
    case 'seen':
      return log.seen.get(entry.of);
    case 'aboard':
      return log.aboard.get(entry.of);
    default:
      return undefined;
  }
};

/** The last moment that can be written. */
const lastMs = Date.UTC(9999, 11, 31, 23, 59, 59, 999);

/**
 * The entry with its id and its moment: now, by the clock of whoever writes it, but always after the entry that it takes the
 * place of. So what a person writes on seeing what stands counts over it, though a clock is wrong or jumped back; only of two
 * that were written without seeing each other do the clocks decide.
 *
 * @example stampEntry(log, { kind: 'tick', of: 'job-1', done: false }, { id, nowMs: Date.now() })
 */
export const stampEntry = (
  log: BoatLog,
  entry: NewEntry,
  { id, nowMs }: { readonly id: string; readonly nowMs: number },
): LogEntry => {
  const beforeMs = Date.parse(stoodBefore(log, entry)?.at ?? '');
  const atMs = Number.isNaN(beforeMs) ? nowMs : Math.max(nowMs, beforeMs + 1);
  const at = new Date(Math.min(atMs, lastMs)).toISOString();
  // reason: an entry without its id and moment is one of the kinds, with both it is that kind whole
  return { ...entry, id, at } as LogEntry;
};
