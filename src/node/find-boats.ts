import { readdir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { byCodeUnit } from '../core/boat/ids.ts';

const ending = '.boat.json';

export interface FoundBoat {
  readonly id: string;
  readonly path: string;
}

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
      if (entry.isFile() && entry.name.endsWith(ending)) found.push({ id: basename(entry.name, ending), path });
      else if (entry.isDirectory() && deeper && !entry.name.startsWith('.')) await look(path, false);
    }
  };
  await look(folder, true);
  return new Map(found.reverse().map((boat) => [boat.id, boat]));
};
