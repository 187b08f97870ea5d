import { mkdir, rename } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { boatEnding } from '../find-boats.ts';
import { fileRefusal } from './file-refusal.ts';
import { holdFile } from './hold-file.ts';

/** The folder among the boats in which those stand that were taken off the list. */
const asideFolder = 'set-aside';

/** What lies beside a boat file and goes with it: her log, earlier states, pictures. */
const besideEndings = ['.log.jsonl', '.backups', '.files'] as const;

const moveIfThere = async (from: string, to: string): Promise<void> => {
  try {
    await rename(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
  }
};

/**
 * Takes a boat file with all that lies beside it out of the way, into a folder of its own where no list looks and from which
 * a person can put it back. Nothing is deleted. Gives where it stands, from the folder of the boats on.
 *
 * @throws UserError where the operating system refuses it
 */
export const setBoatAside = ({
  folder,
  path,
  now = () => new Date(),
}: {
  readonly folder: string;
  readonly path: string;
  readonly now?: () => Date;
}): Promise<string> =>
  holdFile(path, async () => {
    const id = basename(path, boatEnding);
    const stamp = now().toISOString().replaceAll(/[-:.]/g, '');
    try {
      await mkdir(join(folder, asideFolder), { recursive: true });
      const own = await ownFolder(join(folder, asideFolder), `${id}-${stamp}`);
      const to = join(folder, asideFolder, own);
      // first what a list shows: a program that dies between leaves no boat without her log
      await rename(path, join(to, basename(path)));
      for (const ending of besideEndings)
        await moveIfThere(join(dirname(path), `${id}${ending}`), join(to, `${id}${ending}`));
      return `${asideFolder}/${own}`;
    } catch (error) {
      throw fileRefusal(error, path);
    }
  });

/** A folder that was not there before, by that name or the next free one. */
const ownFolder = async (inside: string, name: string): Promise<string> => {
  for (let count = 1; ; count += 1) {
    const own = count === 1 ? name : `${name}-${count}`;
    try {
      await mkdir(join(inside, own));
      return own;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
  }
};
