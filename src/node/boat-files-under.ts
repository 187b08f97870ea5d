import type { Dirent } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { byCodeUnit } from '../core/boat/ids.ts';
import { boatEnding } from './find-boats.ts';

/** Folders that hold no boats of their own: hidden ones, packages, and what is kept beside a boat file. */
const isPassedBy = (name: string): boolean =>
  name.startsWith('.') || name === 'node_modules' || /\.(backups|files)$/.test(name);

const entriesOf = async (folder: string): Promise<Dirent[]> => {
  try {
    return await readdir(folder, { withFileTypes: true });
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    // one inside that may not be looked into, or that went meanwhile
    if (code === 'EACCES' || code === 'EPERM' || code === 'ENOENT') return [];
    throw error;
  }
};

/** The paths of all boat files of a folder and of the folders in it, however deep, by code unit. Links are not followed. */
export const boatFilesUnder = async (folder: string): Promise<string[]> => {
  const found: string[] = [];
  const waiting = [folder];
  for (let inside = waiting.pop(); inside !== undefined; inside = waiting.pop()) {
    for (const entry of await entriesOf(inside)) {
      const path = join(inside, entry.name);
      if (entry.isFile() && entry.name.endsWith(boatEnding)) found.push(path);
      else if (entry.isDirectory() && !isPassedBy(entry.name)) waiting.push(path);
    }
  }
  return found.sort(byCodeUnit);
};
