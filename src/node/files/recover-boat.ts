import { NewerFile } from '../../core/boat/newer-file.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { FileChanged } from './file-changed.ts';
import { readText } from './read-text.ts';
import { saveBoat } from './save-boat.ts';

const isGoodNow = async (path: string): Promise<boolean> => {
  try {
    readBoat((await readText(path)).text);
    return true;
  } catch (error) {
    if (error instanceof NewerFile || !(error instanceof UserError)) throw error;
    return false;
  }
};

/**
 * Puts a good text in the place of a boat file that cannot be read, or is gone. The damaged file is set aside under a name
 * of its own, and stays there. Gives the hash of the file as it is then, and where the damaged one is.
 *
 * @throws NewerFile where a newer program wrote the file, FileChanged where the file can be read by now, or no longer holds what `readHash` says
 */
export const recoverBoat = async ({
  path,
  text,
  readHash,
  now,
}: {
  path: string;
  text: string;
  readHash?: string;
  now?: () => Date;
}): Promise<{ readonly hash: string; readonly aside?: string }> => {
  if (await isGoodNow(path)) {
    throw new FileChanged({
      says: 'The file can be read as it is, and has been left so.',
      place: path,
      whatToDo: 'Open it again.',
    });
  }
  return saveBoat({
    path,
    text,
    isDamaged: true,
    ...(readHash === undefined ? {} : { readHash }),
    ...(now === undefined ? {} : { now }),
  });
};
