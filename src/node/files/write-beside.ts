import { type FileHandle, open, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

const mark = '.fairlead-';
const ending = '.tmp';

/** Whether a file is one that a write left behind. */
export const isTemporaryName = (name: string): boolean => name.startsWith(mark) && name.endsWith(ending);

let written = 0;

/** A name in the folder of a file that no other write of any process uses at the time. */
const temporaryName = (path: string): string => {
  written += 1;
  return join(dirname(path), `${mark}${process.pid}-${written}-${basename(path).slice(0, 100)}${ending}`);
};

/** Makes a temporary file beside a path; one of that name may be left by a program that was killed and had the same number. */
const openBeside = async (path: string, mode: number): Promise<{ temporary: string; handle: FileHandle }> => {
  for (;;) {
    const temporary = temporaryName(path);
    try {
      return { temporary, handle: await open(temporary, 'wx', mode) };
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
    }
  }
};

/** Something that was written beside its place. */
export interface Beside {
  /** puts it in its place, in one step */
  readonly put: () => Promise<void>;
  /** takes it away again */
  readonly drop: () => Promise<void>;
}

/**
 * Writes what a file is to hold to a temporary file in the same folder, where `isSafe` through to the disk. The file keeps its
 * permissions, unless `mode` says others. What stands there and is no file, such as a pipe, is written to in its place.
 * Throws what the operating system says; nothing is left behind then.
 */
export const writeBeside = async (
  path: string,
  content: string | Uint8Array,
  { mode, isSafe }: { mode?: number | undefined; isSafe: boolean },
): Promise<Beside> => {
  const found = await stat(path).catch(() => undefined);
  if (found !== undefined && !found.isFile() && !found.isDirectory())
    return { put: () => writeFile(path, content), drop: async () => undefined };
  // the refusal of a folder is told before anything is written
  if (found?.isDirectory() === true) await (await open(path, 'r+')).close();
  const { temporary, handle } = await openBeside(path, mode ?? (found === undefined ? 0o666 : found.mode & 0o777));
  // what keeps it from being written keeps it from being taken away too, at times; the first is what is told
  const drop = (): Promise<void> => rm(temporary, { force: true }).catch(() => undefined);
  try {
    try {
      await handle.writeFile(content);
      if (isSafe) await handle.sync();
    } finally {
      await handle.close();
    }
  } catch (error) {
    await drop();
    throw error;
  }
  return { put: () => rename(temporary, path), drop };
};
