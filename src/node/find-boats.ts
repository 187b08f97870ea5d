import { readdir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { byCodeUnit } from '../core/boat/ids.ts';

/** What the name of every boat file ends in. */
export const boatEnding = '.boat.json';

export interface FoundBoat {
  readonly id: string;
  readonly path: string;
}

/** A folder inside that may not be looked into, or that went meanwhile, has no boats to show. */
const unlessBarred = (error: unknown): void => {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code !== 'EACCES' && code !== 'EPERM' && code !== 'ENOENT') throw error;
};

/**
 * The boat files of a folder and of the folders just inside it, by id (the file name without its ending).
 * Links are not followed; of two files of one name the first by path counts.
 */
export const findBoats = async (folder: string): Promise<ReadonlyMap<string, FoundBoat>> => {
  const found: FoundBoat[] = [];
  const look = async (inside: string, deeper: boolean): Promise<void> => {
    const entries = await readdir(inside, { withFileTypes: true });
    for (const entry of entries.sort((a, b) => byCodeUnit(a.name, b.name))) {
      const path = join(inside, entry.name);
      if (entry.isFile() && entry.name.endsWith(boatEnding)) found.push({ id: basename(entry.name, boatEnding), path });
      else if (entry.isDirectory() && deeper && !entry.name.startsWith('.'))
        await look(path, false).catch(unlessBarred);
    }
  };
  await look(folder, true);
  return new Map(found.reverse().map((boat) => [boat.id, boat]));
};
