import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A disk of some kilobytes of its own. */
export interface SmallDisk {
  readonly folder: string;
  /** leaves no byte free */
  readonly fill: () => void;
  readonly makeRoom: () => void;
  readonly remount: (as: 'ro' | 'rw') => void;
}

const mounts = (...how: readonly string[]): boolean => spawnSync('mount', how).status === 0;

/** Whether this machine lends a disk to whoever runs the tests; the tests that need one are skipped where it does not. */
export const lendsDisks = process.getuid?.() === 0 && mounts('--version');

const writes = (path: string, bytes: number): boolean => {
  try {
    writeFileSync(path, Buffer.alloc(bytes), { flag: 'a' });
    return true;
  } catch {
    return false;
  }
};

/** A small disk for one test; undefined where mounting is refused after all, as in some containers. */
export const smallDisk = (sizeKb: number): SmallDisk | undefined => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-disk-'));
  if (!mounts('-t', 'tmpfs', '-o', `size=${sizeKb}k`, 'tmpfs', folder)) {
    rmSync(folder, { recursive: true });
    return undefined;
  }
  onTestFinished(() => {
    spawnSync('umount', ['-l', folder]);
    rmSync(folder, { recursive: true, force: true });
  });
  const ballast = join(folder, 'ballast');
  return {
    folder,
    fill: () => {
      while (writes(ballast, 4096));
    },
    makeRoom: () => rmSync(ballast),
    remount: (as) => {
      if (!mounts('-o', `remount,${as}`, folder)) throw new Error(`could not be mounted anew as ${as}`);
    },
  };
};

/** All that is in a folder, by its path in it, with what each file holds. */
export const contentsOf = (folder: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(folder, { recursive: true })
      .map(String)
      .filter((name) => name !== 'ballast')
      .sort()
      .map((name) => {
        const path = join(folder, name);
        return [name, statSync(path).isDirectory() ? 'a folder' : readFileSync(path, 'latin1')];
      }),
  );
