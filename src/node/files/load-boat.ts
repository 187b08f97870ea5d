import type { Boat } from '../../core/boat/boat-schema.ts';
import { NewerFile } from '../../core/boat/newer-file.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { goodState } from './good-state.ts';
import { readText } from './read-text.ts';

/** A boat file that was read: the boat, the text as it stood, and the hash that saveBoat takes as `readHash`. */
export interface LoadedBoat {
  readonly boat: Boat;
  readonly text: string;
  readonly hash: string;
}

const boatOf = (text: string, path: string): Boat => {
  try {
    return readBoat(text);
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    if (error instanceof NewerFile) throw error;
    const { says, place, whatToDo, more } = error;
    throw new UserError({ says, place: place === undefined ? path : `${place} of ${path}`, whatToDo, more });
  }
};

/** A moment as it is printed: `2026-03-01 09:30 UTC`. */
export const printMoment = (ms: number): string => `${new Date(ms).toISOString().slice(0, 16).replace('T', ' ')} UTC`;

/** The refusal of a file, with the backup that can take its place where there is one. */
const withBackup = async (refusal: UserError, path: string): Promise<UserError> => {
  const good = refusal instanceof NewerFile ? undefined : await goodState(path).catch(() => undefined);
  if (good === undefined) return refusal;
  const { says, place, whatToDo, more } = refusal;
  const backup = `Or go back to how she was until ${printMoment(good.untilMs)}, by the newest backup that can be read: fairlead restore ${path}`;
  return new UserError({ says, ...(place === undefined ? {} : { place }), whatToDo, more: [...more, backup] });
};

/**
 * Reads a boat file, or the standard input where the path is `-`. Throws UserError for a file that is missing, may not be
 * read, is over 16 MB (told by its size, without reading it), is not UTF-8 text or is not a good boat file; it names the
 * backup that can take the place of one that is damaged or gone.
 */
export const loadBoat = async (path: string, options: Parameters<typeof readText>[1] = {}): Promise<LoadedBoat> => {
  const shown = path === '-' ? 'the standard input' : path;
  try {
    const { text, hash } = await readText(path, options);
    return { boat: boatOf(text, shown), text, hash };
  } catch (error) {
    throw error instanceof UserError && path !== '-' ? await withBackup(error, path) : error;
  }
};
