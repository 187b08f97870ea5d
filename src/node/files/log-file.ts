import { type FileHandle, open, readFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { UserError } from '../../core/boat/user-error.ts';
import { addedLines } from '../../core/log/added-lines.ts';
import type { LogEntry } from '../../core/log/log-entry.ts';
import { boatEnding } from '../find-boats.ts';
import { fileRefusal } from './file-refusal.ts';

/** Where the log of a boat file is: `gannet.log.jsonl` beside `gannet.boat.json`. */
export const logPathOf = (boatPath: string): string =>
  join(dirname(boatPath), `${basename(boatPath, boatEnding)}.log.jsonl`);

const largestLogBytes = 64_000_000;

/** The text of a boat’s log; empty where she has none yet. */
export const readLogText = async (boatPath: string): Promise<string> => {
  const path = logPathOf(boatPath);
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return '';
    throw fileRefusal(error, path);
  }
};

/** One after the other for each file, so that two that add at once do not look past each other. */
const waiting = new Map<string, Promise<unknown>>();

const inTurn = async <Result>(path: string, work: () => Promise<Result>): Promise<Result> => {
  const before = waiting.get(path) ?? Promise.resolve();
  const now = before.then(work, work);
  const settled = now.catch(() => undefined);
  waiting.set(path, settled);
  try {
    return await now;
  } finally {
    if (waiting.get(path) === settled) waiting.delete(path);
  }
};

/** Cuts off the part of some lines that came into a log before the disk refused the rest, where nobody added more since. */
const takeBack = async (file: FileHandle, { size, text }: { size: number; text: string }): Promise<void> => {
  const now = (await file.stat()).size;
  const part = Buffer.alloc(Math.max(0, now - size));
  await file.read(part, 0, part.length, size);
  if (Buffer.from(text).subarray(0, part.length).equals(part)) await file.truncate(size);
};

const addTo = async (path: string, entries: readonly LogEntry[]): Promise<number> => {
  const file = await open(path, 'a+');
  try {
    const { size } = await file.stat();
    if (size > largestLogBytes) {
      throw new UserError({
        says: 'The log of this boat is larger than a log may be.',
        place: path,
        whatToDo: 'Move the file away; a new one is begun.',
      });
    }
    const { text, count } = addedLines((await file.readFile()).toString('utf8'), entries);
    if (count === 0) return 0;
    try {
      await file.appendFile(text);
      await file.datasync();
    } catch (error) {
      await takeBack(file, { size, text }).catch(() => undefined);
      throw error;
    }
    return count;
  } finally {
    await file.close();
  }
};

/**
 * Adds entries to the log beside a boat file and waits for the disk; an entry that is in it already is left out. Gives how
 * many were new.
 *
 * @throws UserError when the operating system refuses the file; it holds then what it held
 */
export const addToLog = (boatPath: string, entries: readonly LogEntry[]): Promise<number> => {
  const path = logPathOf(boatPath);
  return inTurn(path, async () => {
    try {
      return await addTo(path, entries);
    } catch (error) {
      throw fileRefusal(error, path);
    }
  });
};
