import { type FileHandle, open, readdir, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { isTemporaryName, writeBeside } from './write-beside.ts';

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

/**
 * Writes a file so that at every moment, power cut included, it holds either what it held or all of the new text: to a
 * temporary file in the same folder, through to the disk, renamed over the file, the folder through to the disk.
 * Throws what the operating system says; the file is then as it was. It keeps its permissions, unless `mode` says others,
 * which systems without such bits do not look at.
 */
export const writeWhole = async (path: string, content: string | Uint8Array, mode?: number): Promise<void> => {
  const { put, drop } = await writeBeside(path, content, { mode, isSafe: true });
  try {
    await put();
  } catch (error) {
    await drop();
    throw error;
  }
  await syncFolder(dirname(path));
};

/** Takes away temporary files that a save cut short left in a folder, once they are older than a minute. */
export const sweepTemporaries = async ({ folder, nowMs }: { folder: string; nowMs: number }): Promise<void> => {
  for (const name of await readdir(folder)) {
    if (!isTemporaryName(name)) continue;
    const path = join(folder, name);
    // another process may have swept it in between
    const found = await stat(path).catch(() => undefined);
    if (found !== undefined && nowMs - found.mtimeMs > 60_000) await rm(path, { force: true });
  }
};
