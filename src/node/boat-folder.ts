import { readFile } from 'node:fs/promises';
import { byCodeUnit } from '../core/boat/ids.ts';
import { readBoat } from '../core/boat/read-boat.ts';
import { UserError } from '../core/boat/user-error.ts';
import { type FoundBoat, findBoats } from './find-boats.ts';

const describe = async (found: FoundBoat): Promise<{ id: string; name: string; says: string }> => {
  try {
    const boat = readBoat(await readFile(found.path, 'utf8'));
    const kind = boat.hull.kind.replaceAll('-', ' ');
    return { id: found.id, name: boat.name, says: `${boat.hull.lengthM} m ${kind}, ${boat.kit.length} units` };
  } catch (cause) {
    const says = cause instanceof UserError ? cause.says : 'This file cannot be read.';
    return { id: found.id, name: found.id, says };
  }
};

/** The boats of one folder: their list, and the text of each by id. A file that cannot be read is listed with the reason. */
export const boatFolder = (
  folder: string,
): {
  list: () => Promise<{ id: string; name: string; says: string }[]>;
  text: (id: string) => Promise<string | undefined>;
} => ({
  list: async () => {
    const boats = [...(await findBoats(folder)).values()].sort((a, b) => byCodeUnit(a.id, b.id));
    return Promise.all(boats.map(describe));
  },
  text: async (id) => {
    const found = (await findBoats(folder)).get(id);
    return found === undefined ? undefined : readFile(found.path, 'utf8');
  },
});
