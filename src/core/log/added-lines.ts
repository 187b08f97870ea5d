import type { LogEntry } from './log-entry.ts';
import { readLog } from './read-log.ts';

/**
 * What is to be added to the text of a log so that it holds some entries: those it has not yet, each once, a line each.
 *
 * @example addedLines('', [entry, entry]) // { text: '{"kind":…}\n', count: 1 }
 */
export const addedLines = (
  log: string,
  entries: readonly LogEntry[],
): { readonly text: string; readonly count: number } => {
  const known = new Set(readLog(log).entries.map(({ id }) => id));
  const added: string[] = [];
  for (const entry of entries) {
    if (known.has(entry.id)) continue;
    known.add(entry.id);
    added.push(`${JSON.stringify(entry)}\n`);
  }
  // a machine that went dark in the middle of a line leaves it unfinished; the next one must not be joined to it
  const isTorn = added.length > 0 && log !== '' && !log.endsWith('\n');
  return { text: `${isTorn ? '\n' : ''}${added.join('')}`, count: added.length };
};
