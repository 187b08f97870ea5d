import { listLine } from '../core/boat/list-line.ts';
import { NewerFile } from '../core/boat/newer-file.ts';
import { readBoat } from '../core/boat/read-boat.ts';
import { readNewerBoat } from '../core/boat/read-newer-boat.ts';
import { UserError } from '../core/boat/user-error.ts';
import type { BoatOnList } from '../core/boat-store-shape.ts';
import { readText } from './files/read-text.ts';
import type { FoundBoat } from './find-boats.ts';

type Described = Omit<BoatOnList, 'id'>;

const refusalIn = (cause: unknown): string => (cause instanceof UserError ? cause.says : 'This file cannot be read.');

const described = (text: string, id: string): Described => {
  try {
    const boat = readBoat(text);
    return { name: boat.name, says: listLine(boat) };
  } catch (cause) {
    if (!(cause instanceof NewerFile)) return { name: id, says: refusalIn(cause) };
    const { boat } = readNewerBoat(text);
    return { name: boat.name, says: `${listLine(boat)}, written by a newer Fairlead: to look at only` };
  }
};

/**
 * Says what a list shows of some boat files, time and again; a file that cannot be read is shown with the reason. A file
 * that holds the very bytes it held before is not taken apart once more, for that takes most of the time of a long list.
 */
export const boatDescriber = (): ((boats: readonly FoundBoat[]) => Promise<readonly BoatOnList[]>) => {
  let before: ReadonlyMap<string, Described> = new Map();
  return async (boats) => {
    const now = new Map<string, Described>();
    const list = await Promise.all(
      boats.map(async ({ id, path }) => {
        try {
          const { text, hash } = await readText(path);
          // a file that cannot be read goes by its own name
          const key = `${id} ${hash}`;
          const says = before.get(key) ?? described(text, id);
          now.set(key, says);
          return { id, ...says };
        } catch (cause) {
          return { id, name: id, says: refusalIn(cause) };
        }
      }),
    );
    before = now;
    return list;
  };
};
