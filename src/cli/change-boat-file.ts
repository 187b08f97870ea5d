import type { EditCall } from '../core/boat/history.ts';
import { applyEdits } from '../core/boat/history.ts';
import { startHistory } from '../core/boat/start-history.ts';
import { UserError } from '../core/boat/user-error.ts';
import { writeBoat } from '../core/boat/write-boat.ts';
import { type LoadedBoat, loadBoat } from '../node/files/load-boat.ts';
import { saveBoat } from '../node/files/save-boat.ts';

/**
 * Makes edits on a boat file and gives the boat as it stands then.
 *
 * @throws UserError where the boat came from standard input, an edit is refused, or the file cannot be written or was changed meanwhile
 */
export const changeBoatFile = async (
  path: string,
  { boat, hash }: LoadedBoat,
  calls: readonly EditCall[],
): Promise<LoadedBoat> => {
  if (path === '-') {
    throw new UserError({
      says: 'What is asked for is kept in the boat file, and standard input is none.',
      whatToDo: 'Give the boat file by its name.',
    });
  }
  const changed = applyEdits(startHistory(boat), calls);
  await saveBoat({ path, text: writeBoat(changed.boat), readHash: hash });
  return loadBoat(path);
};
