import { readFile } from 'node:fs/promises';
import { UserError } from '../core/boat/user-error.ts';
import { saveBoat } from '../node/files/save-boat.ts';

/**
 * Saves a boat file under a name that is still free.
 *
 * @throws UserError when a file of that name is there, for it may be somebody's work
 */
export const saveNewBoat = async (path: string, text: string): Promise<void> => {
  const taken = await readFile(path).then(
    () => true,
    () => false,
  );
  if (taken) {
    throw new UserError({
      says: 'A file of this name is there already.',
      place: path,
      whatToDo: 'Choose another name.',
    });
  }
  await saveBoat({ path, text, isNew: true });
};
