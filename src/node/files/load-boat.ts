import type { Boat } from '../../core/boat/boat-schema.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
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
    const { says, place, whatToDo, more } = error;
    throw new UserError({ says, place: place === undefined ? path : `${place} of ${path}`, whatToDo, more });
  }
};

/**
 * Reads a boat file, or the standard input where the path is `-`. Throws UserError for a file that is missing, may not be
 * read, is over 16 MB (told by its size, without reading it), is not UTF-8 text or is not a good boat file.
 */
export const loadBoat = async (path: string, options: Parameters<typeof readText>[1] = {}): Promise<LoadedBoat> => {
  const { text, hash } = await readText(path, options);
  return { boat: boatOf(text, path === '-' ? 'the standard input' : path), text, hash };
};
