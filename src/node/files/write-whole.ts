import { type FileHandle, open, readdir, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

const mark = '.fairlead-';
const ending = '.tmp';

let written = 0;

/** A name in the folder of a file that no other save of any process uses. */
const temporaryName = (path: string): string => {
  written += 1;
  return join(dirname(path), `${mark}${process.pid}-${written}-${basename(path).slice(0, 100)}${ending}`);
};

/** What systems say that cannot push a folder through to the disk, or do it by themselves. */
const cannotSync: ReadonlySet<unknown> = new Set(['EINVAL', 'ENOTSUP', 'EPERM', 'EACCES', 'EISDIR']);

/** Makes sure that a rename in a folder outlives a power cut. */
const syncFolder = async (folder: string): Promise<void> => {
  let handle: FileHandle | undefined;
  try {
    handle = await open(folder, 'r');
    await handle.sync();
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && cannotSync.has(error.code))) throw error;
  } finally {
    await handle?.close();
  }
};

/** Permissions of the file that is replaced; a new file gets the usual ones. */
const modeOf = async (path: string): Promise<number> =>
  stat(path).then(
    (found) => found.mode & 0o777,
    () => 0o666,
  );

/**
 * Writes a file so that at every moment, power cut included, it holds either what it held or all of the new text: to a
 * temporary file in the same folder, through to the disk, renamed over the file, the folder through to the disk.
 * Throws what the operating system says; the file is then as it was. It keeps its permissions, unless `mode` says others,
 * which systems without such bits do not look at.
 */
export const writeWhole = async (path: string, content: string | Uint8Array, mode?: number): Promise<void> => {
  const temporary = temporaryName(path);
  const handle = await open(temporary, 'wx', mode ?? (await modeOf(path)));
  try {
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(temporary, path);
  } catch (error) {
    await rm(temporary, { force: true });
    throw error;
  }
  await syncFolder(dirname(path));
};

/** Takes away temporary files that a save cut short left in a folder, once they are older than a minute. */
export const sweepTemporaries = async ({ folder, nowMs }: { folder: string; nowMs: number }): Promise<void> => {
  for (const name of await readdir(folder)) {
    if (!name.startsWith(mark) || !name.endsWith(ending)) continue;
    const path = join(folder, name);
    // another process may have swept it in between
    const found = await stat(path).catch(() => undefined);
    if (found !== undefined && nowMs - found.mtimeMs > 60_000) await rm(path, { force: true });
  }
};
