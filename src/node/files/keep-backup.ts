import { mkdir, readdir, readFile, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { type Backup, backupsToDrop } from '../../core/boat/backups-to-drop.ts';
import { datedId, freeStateId, stateMs } from '../../core/boat/free-state-id.ts';
import { byCodeUnit } from '../../core/boat/ids.ts';
import { fileRefusal } from './file-refusal.ts';
import { sweepTemporaries, writeWhole } from './write-whole.ts';

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
  return names.toReversed().map((name) => ({ path: join(folder, name), name, untilMs: stateMs(name) }));
};

const described = async (folder: string, names: readonly string[]): Promise<Backup[]> =>
  Promise.all(
    names.map(async (name) => ({ name, keptMs: stateMs(name), bytes: (await stat(join(folder, name))).size })),
  );

/** What a file holds that is to be kept, and when. */
interface Kept {
  readonly path: string;
  readonly content: Uint8Array;
  readonly date: Date;
}

/** A full disk is that of the boat file too, and told of it; anything else is the matter of the folder. */
const orRefused = async <Value>(folder: string, wanted: Promise<Value>): Promise<Value> => {
  try {
    return await wanted;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    throw code === 'ENOSPC' || code === 'EDQUOT' ? error : fileRefusal(error, folder);
  }
};

const keep = async (folder: string, { content, date }: Kept): Promise<void> => {
  await mkdir(folder, { recursive: true });
  await sweepTemporaries({ folder, nowMs: date.getTime() });
  const kept = await backupsIn(folder);
  const newest = kept.at(-1);
  if (newest !== undefined && (await readFile(join(folder, newest))).equals(content)) return;
  await writeWhole(join(folder, freeName(kept, date)), content);
  const all = await described(folder, await backupsIn(folder));
  for (const old of backupsToDrop(all, date.getTime())) await rm(join(folder, old), { force: true });
};

/**
 * Keeps what a boat file holds before it is saved over, under the date and time, in the folder beside it; nothing where
 * the newest backup holds the same. They are thinned out with age, as `backupsToDrop` says. The files end in .json alone,
 * so that they are not listed as boats.
 *
 * @throws UserError that names the folder, where the operating system refuses it; that a disk is full as the system says it
 */
export const keepBackup = async (kept: Kept): Promise<void> => {
  const folder = backupFolder(kept.path);
  await orRefused(folder, keep(folder, kept));
};

/**
 * Keeps what a damaged file holds in the folder of its backups, under a name that ends in .damaged.json: it is no state of
 * the boat, and is never thinned out. Gives where it is.
 */
export const setAside = async ({ path, content, date }: Kept): Promise<string> => {
  const folder = backupFolder(path);
  await orRefused(folder, mkdir(folder, { recursive: true }));
  const taken = new Set(await readdir(folder));
  const name = datedId(date);
  let ending = '.damaged.json';
  for (let counter = 2; taken.has(`${name}${ending}`); counter += 1) ending = `-${counter}.damaged.json`;
  const aside = join(folder, `${name}${ending}`);
  await orRefused(folder, writeWhole(aside, content));
  return aside;
};
