import { access, constants, mkdir, realpath, rmdir } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { fileRefusal } from './file-refusal.ts';
import { type Beside, writeBeside } from './write-beside.ts';

/** Makes a folder with those it lies in; gives what takes away again those that were made, as far as they are empty. */
const madeFolder = async (wanted: string): Promise<() => Promise<void>> => {
  const folder = resolve(wanted);
  const first = await mkdir(folder, { recursive: true });
  if (first === undefined) return async () => undefined;
  return async () => {
    try {
      for (let inside = folder; inside.length >= first.length; inside = dirname(inside)) await rmdir(inside);
    } catch {
      // somebody put something in it meanwhile
    }
  };
};

const exists = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

const beside = async (path: string, content: string | Uint8Array): Promise<Beside> => {
  // a link stays a link: the file it leads to is written
  const real = await realpath(path).catch(() => path);
  // a rename would replace a file that its owner made read-only
  if (await exists(real)) await access(real, constants.W_OK);
  return writeBeside(real, content, { isSafe: false });
};

/**
 * Writes some files of one folder, all of them or none, so that no papers of yesterday stand among those of today: each beside
 * its place first, then all put there. Folders are made where they are missing. They are not waited for until they are
 * through to the disk, as whatever was made from a boat can be made again.
 *
 * @throws UserError where the operating system refuses one of them; what was there is then as it was
 */
export const writeSet = async (
  folder: string,
  files: Iterable<readonly [name: string, content: string | Uint8Array]>,
): Promise<void> => {
  const all = [...files];
  const written: Beside[] = [];
  const unmake: (() => Promise<void>)[] = [];
  let at = folder;
  try {
    for (const inside of new Set(all.map(([name]) => dirname(join(folder, name))))) {
      at = inside;
      unmake.push(await madeFolder(inside));
    }
    for (const [name, content] of all) {
      at = join(folder, name);
      written.push(await beside(at, content));
    }
    at = folder;
    for (const { put } of written) await put();
  } catch (error) {
    for (const { drop } of written) await drop();
    for (const undo of unmake.toReversed()) await undo();
    throw fileRefusal(error, at);
  }
};
