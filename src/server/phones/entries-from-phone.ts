import { checkEntries } from '../../core/log/check-entries.ts';
import type { LogEntry } from '../../core/log/log-entry.ts';
import { readLog } from '../../core/log/read-log.ts';
import { phoneKinds } from './phone-kinds.ts';

/** A phone that was out of reach for weeks sends the rest in the next one. */
export const mostEntriesAtOnce = 500;

/** Who wrote each entry of a log, by its id. */
const writers = (logText: string): ReadonlyMap<string, string | undefined> =>
  new Map(readLog(logText).entries.map(({ id, by }) => [id, by]));

const listIn = (sent: unknown): unknown =>
  typeof sent === 'object' && sent !== null && 'entries' in sent ? sent.entries : undefined;

/**
 * The entries a phone sent, signed with its name whatever they say themselves, or a sentence that says why none of them is
 * taken. Only kinds that a phone may write are, and it withdraws only what was written under its own name, or what nobody
 * wrote yet.
 */
export const entriesFromPhone = (
  sent: unknown,
  { name, logText }: { name: string; logText: string },
): readonly LogEntry[] | string => {
  const entries = checkEntries(listIn(sent), mostEntriesAtOnce);
  if (typeof entries === 'string') return entries;
  const strange = entries.find(({ kind }) => !phoneKinds.has(kind));
  if (strange !== undefined) return `A phone may not write entries of the kind "${strange.kind}".`;
  if (entries.some(({ kind }) => kind === 'withdrawn')) {
    const by = writers(logText);
    const foreign = entries.some((one) => one.kind === 'withdrawn' && by.has(one.entry) && by.get(one.entry) !== name);
    if (foreign) return 'A phone may take back only what was written on it.';
  }
  // once more, for with the name a line may have become too long to be read back
  return checkEntries(
    entries.map((entry): LogEntry => ({ ...entry, by: name })),
    mostEntriesAtOnce,
  );
};
