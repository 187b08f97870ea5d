import { access, copyFile, mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { UserError } from '../core/boat/user-error.ts';
import { findBoats } from './find-boats.ts';

const isThere = async (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

/**
 * Makes the boats folder with the demo boats in it where there is none yet. A folder that exists is left as it is,
 * so a boat somebody threw away does not come back.
 */
export const seedBoats = async ({ folder, examples }: { folder: string; examples: string }): Promise<void> => {
  if (await isThere(folder)) return;
  try {
    await mkdir(folder, { recursive: true });
    for (const boat of (await findBoats(examples)).values()) {
      await copyFile(boat.path, join(folder, `${boat.id}.boat.json`));
    }
  } catch {
    throw new UserError({
      says: 'The folder for the boats could not be made.',
      place: folder,
      whatToDo: 'Choose a folder you may write to: fairlead open FOLDER.',
    });
  }
};
