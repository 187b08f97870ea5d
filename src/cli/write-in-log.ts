import { randomUUID } from 'node:crypto';
import { UserError } from '../core/boat/user-error.ts';
import type { LogEntry } from '../core/log/log-entry.ts';
import { type NewEntry, stampEntry } from '../core/log/new-entry.ts';
import { addToLog } from '../node/files/log-file.ts';
import { logAtTerminal } from './log-at-terminal.ts';

/**
 * Writes entries into the log beside a boat file.
 *
 * @throws UserError where the boat came from standard input, which has no log, or the log cannot be written
 */
export const writeInLog = async (file: string, entries: readonly NewEntry[]): Promise<void> => {
  if (file === '-')
    throw new UserError({
      says: 'What is found and ticked is kept beside the boat file, and standard input is none.',
      whatToDo: 'Give the boat file by its name.',
    });
  const log = await logAtTerminal(file);
  const stamped = entries.map(
    (entry): LogEntry => stampEntry(log, entry, { id: randomUUID().replaceAll('-', ''), nowMs: Date.now() }),
  );
  await addToLog(file, stamped);
};
