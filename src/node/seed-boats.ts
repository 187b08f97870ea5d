import { access, readFile } from 'node:fs/promises';
import { writeSet } from './files/write-set.ts';
import { boatEnding, findBoats } from './find-boats.ts';

const isThere = async (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

/**
 * Makes the boats folder with the demo boats in it where there is none yet: all of them or no folder at all. A folder that
 * exists is left as it is, so a boat somebody threw away does not come back.
 *
 * @throws UserError where the operating system refuses it
 */
export const seedBoats = async ({ folder, examples }: { folder: string; examples: string }): Promise<void> => {
  if (await isThere(folder)) return;
  const boats = [...(await findBoats(examples)).values()];
  const texts = boats.map(async ({ id, path }) => [`${id}${boatEnding}`, await readFile(path)] as const);
  await writeSet(folder, await Promise.all(texts));
};
