import { access, constants, readFile, realpath, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { contentHash } from './content-hash.ts';
import { FileChanged } from './file-changed.ts';
import { fileRefusal } from './file-refusal.ts';
import { holdFile } from './hold-file.ts';
import { keepBackup, setAside } from './keep-backup.ts';
import { sweepTemporaries, writeWhole } from './write-whole.ts';

interface Save {
  readonly path: string;
  readonly text: string;
  /** hash of what the file held when it was read; absent to save over whatever is there */
  readonly readHash?: string;
  /** true for a file that must not be there yet */
  readonly isNew?: boolean;
  /** true where what the file holds cannot be read: it is set aside for good, as no state of the boat */
  readonly isDamaged?: boolean;
  readonly now?: () => Date;
}

const unlessMissing = async <Value>(wanted: Promise<Value>): Promise<Value | undefined> => {
  try {
    return await wanted;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
};

const checkUnchanged = (held: Uint8Array, { path, readHash, isNew }: Save): void => {
  if (isNew === true) {
    throw new FileChanged({
      says: 'There is already a file of this name, and it has not been saved over.',
      place: path,
      whatToDo: 'Save under another name.',
    });
  }
  if (readHash === undefined || contentHash(held) === readHash) return;
  throw new FileChanged({
    says: 'The file was changed by something else since it was opened, and has not been saved over.',
    place: path,
    whatToDo: 'Open it again to see what changed, or save under another name.',
  });
};

interface Saved {
  readonly hash: string;
  /** where a damaged file was set aside */
  readonly aside?: string;
}

const save = async (path: string, wanted: Save): Promise<Saved> => {
  const now = wanted.now?.() ?? new Date();
  let aside: string | undefined;
  const held = await unlessMissing(readFile(path));
  const hash = contentHash(wanted.text);
  if (held !== undefined) {
    // a save that was made, and whose answer was lost, is asked for again
    if (wanted.isNew !== true && contentHash(held) === hash) return { hash };
    checkUnchanged(held, wanted);
    // a rename would replace a file that its owner made read-only
    await access(path, constants.W_OK);
    const kept = { path, content: held, date: now };
    if (wanted.isDamaged === true) aside = await setAside(kept);
    else await keepBackup(kept);
  }
  try {
    await sweepTemporaries({ folder: dirname(path), nowMs: now.getTime() });
    await writeWhole(path, wanted.text);
  } catch (error) {
    // the damaged file is still in its place, and each try would leave one more of it
    if (aside !== undefined) await rm(aside, { force: true });
    throw error;
  }
  return { hash, ...(aside === undefined ? {} : { aside }) };
};

const saveHeld = async (wanted: Save): Promise<Saved> => {
  // a link stays a link: the file it leads to is saved
  const path = (await unlessMissing(realpath(wanted.path))) ?? wanted.path;
  return holdFile(path, () => save(path, wanted));
};

const underWay = new Map<string, Promise<unknown>>();

/**
 * Saves the text of a boat file, whole or not at all, and keeps what the file held before in the backups beside it.
 * Saves of one path wait for one another, those of other programs too. Gives the hash to pass as `readHash` next time. Throws FileChanged where the file
 * changed since it was read, UserError where the disk is full or may not be written to; the file is then as it was.
 *
 * @example await saveBoat({ path: 'boats/gannet.boat.json', text: writeBoat(boat), readHash: loaded.hash })
 */
export const saveBoat = async (wanted: Save): Promise<Saved> => {
  const before = underWay.get(wanted.path) ?? Promise.resolve();
  const own = before.then(() => saveHeld(wanted));
  const settled = own.catch(() => undefined);
  underWay.set(wanted.path, settled);
  try {
    return await own;
  } catch (error) {
    throw fileRefusal(error, wanted.path);
  } finally {
    if (underWay.get(wanted.path) === settled) underWay.delete(wanted.path);
  }
};
