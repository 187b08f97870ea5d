import type { LogEntry } from './log-entry.ts';
import { checkEntry } from './read-log.ts';

/** Entries that somebody sent, all of them checked; or a sentence that says which of them is none, and why. */
export const checkEntries = (sent: unknown, most: number): readonly LogEntry[] | string => {
  if (!Array.isArray(sent)) return 'Entries are sent as a list.';
  if (sent.length > most) return `At most ${most} entries are added at once.`;
  const entries: LogEntry[] = [];
  for (const [at, value] of sent.entries()) {
    const entry = checkEntry(value);
    if (typeof entry === 'string') return `Entry ${at + 1} cannot be added: ${entry}`;
    entries.push(entry);
  }
  return entries;
};
