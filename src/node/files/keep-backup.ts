import { mkdir, readdir, readFile, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { type Backup, backupsToDrop } from '../../core/boat/backups-to-drop.ts';
import { freeStateId } from '../../core/boat/free-state-id.ts';
import { byCodeUnit } from '../../core/boat/ids.ts';
import { sweepTemporaries, writeWhole } from './write-whole.ts';

/** When a backup was kept, by its name; the other way round. */
const datedMs = (name: string): number => {
  const [year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0, ms = 0] = name.split(/[-.]/).map(Number);
  return Date.UTC(year, month - 1, day, hour, minute, second, ms);
};

const isBackup = (name: string): boolean => /^\d{4}(-\d{2}){5}-\d{3}(-\d+)?\.json$/.test(name);

/** Backups from the oldest to the newest. */
const backupsIn = async (folder: string): Promise<string[]> =>
  (await readdir(folder)).filter(isBackup).sort((a, b) => byCodeUnit(a.replace('.json', ''), b.replace('.json', '')));

const freeName = (taken: readonly string[], date: Date): string =>
  `${freeStateId(
    taken.map((name) => basename(name, '.json')),
    date,
  )}.json`;

/** Where the backups of a boat file are: `gannet.backups` beside `gannet.boat.json`. */
const backupFolder = (path: string): string =>
  join(dirname(path), `${basename(path).replace(/(\.boat)?\.json$/, '')}.backups`);

const unlessMissing = async (names: Promise<string[]>): Promise<string[]> => {
  try {
    return await names;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return [];
    throw error;
  }
};

/** A backup of a boat file: where it is, and when what it holds was saved over. */
export interface KeptState {
  readonly path: string;
  readonly name: string;
  readonly untilMs: number;
}

/** The backups of a boat file, the newest first; none where nothing was saved over yet. */
export const keptStates = async (path: string): Promise<readonly KeptState[]> => {
  const folder = backupFolder(path);
  const names = await unlessMissing(backupsIn(folder));
  return names.toReversed().map((name) => ({ path: join(folder, name), name, untilMs: datedMs(name) }));
};

const described = async (folder: string, names: readonly string[]): Promise<Backup[]> =>
  Promise.all(
    names.map(async (name) => ({ name, keptMs: datedMs(name), bytes: (await stat(join(folder, name))).size })),
  );

/**
 * Keeps what a boat file holds before it is saved over, under the date and time, in the folder beside it; nothing where
 * the newest backup holds the same. They are thinned out with age, as `backupsToDrop` says. The files end in .json alone,
 * so that they are not listed as boats. Throws what the operating system says.
 */
export const keepBackup = async ({
  path,
  content,
  date,
}: {
  path: string;
  content: Uint8Array;
  date: Date;
}): Promise<void> => {
  const folder = backupFolder(path);
  await mkdir(folder, { recursive: true });
  await sweepTemporaries({ folder, nowMs: date.getTime() });
  const kept = await backupsIn(folder);
  const newest = kept.at(-1);
  if (newest !== undefined && (await readFile(join(folder, newest))).equals(content)) return;
  await writeWhole(join(folder, freeName(kept, date)), content);
  const all = await described(folder, await backupsIn(folder));
  for (const old of backupsToDrop(all, date.getTime())) await rm(join(folder, old), { force: true });
};
