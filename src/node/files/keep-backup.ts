import { mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { byCodeUnit } from '../../core/boat/ids.ts';
import { sweepTemporaries, writeWhole } from './write-whole.ts';

const keptAtMost = 20;

/** A date and time in a file name, sorted as it is read: `2026-03-01-09-30-00-000`, universal time. */
const dated = (date: Date): string => date.toISOString().replace(/[T:.]/g, '-').replace('Z', '');

const isBackup = (name: string): boolean => /^\d{4}(-\d{2}){5}-\d{3}(-\d+)?\.json$/.test(name);

/** Backups from the oldest to the newest. */
const backupsIn = async (folder: string): Promise<string[]> =>
  (await readdir(folder)).filter(isBackup).sort((a, b) => byCodeUnit(a.replace('.json', ''), b.replace('.json', '')));

const freeName = (taken: readonly string[], date: Date): string => {
  const name = dated(date);
  let counter = 1;
  while (taken.includes(`${name}${counter === 1 ? '' : `-${counter}`}.json`)) counter += 1;
  return `${name}${counter === 1 ? '' : `-${counter}`}.json`;
};

/** Where the backups of a boat file are: `gannet.backups` beside `gannet.boat.json`. */
const backupFolder = (path: string): string =>
  join(dirname(path), `${basename(path).replace(/(\.boat)?\.json$/, '')}.backups`);

/**
 * Keeps what a boat file holds before it is saved over, under the date and time, in the folder beside it; nothing where
 * the newest backup holds the same. The newest 20 are kept. The files end in .json alone, so that they are not listed as
 * boats. Throws what the operating system says.
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
  const all = await backupsIn(folder);
  for (const old of all.slice(0, -keptAtMost)) await rm(join(folder, old), { force: true });
};
