import { open, readFile, rename, rm, stat } from 'node:fs/promises';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { UserError } from '../../core/boat/user-error.ts';

/** A mark this old was left by a program that is gone, whatever it says; a save takes far less. */
const leftAfterMs = 60_000;
/** A mark without a name in it was left by a program that died while it wrote one. */
const namelessAfterMs = 2_000;
const askEveryMs = 25;
const patienceMs = 10_000;

/** Marks of this very process: one of its number that is not among them was left by another that had the same. */
const own = new Set<string>();
let taken = 0;

const codeOf = (error: unknown): unknown => (error instanceof Error && 'code' in error ? error.code : undefined);

const markOf = (path: string): string => join(dirname(path), `.fairlead-${basename(path).slice(0, 100)}.lock`);

/** Puts the mark there; false where there is one. */
const take = async (mark: string): Promise<boolean> => {
  let handle: Awaited<ReturnType<typeof open>>;
  try {
    handle = await open(mark, 'wx');
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    throw error;
  }
  own.add(mark);
  try {
    await handle.writeFile(`${hostname()} ${process.pid}`);
  } catch (error) {
    await rm(mark, { force: true });
    own.delete(mark);
    throw error;
  } finally {
    await handle.close();
  }
  return true;
};

const isRunning = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return codeOf(error) === 'EPERM';
  }
};

/** Whether whoever put a mark there is gone: a program that was killed takes nothing away. */
const isLeft = (mark: string, says: string, ageMs: number): boolean => {
  const [host, number] = says.split(' ');
  if (says === '') return ageMs > namelessAfterMs;
  if (ageMs > leftAfterMs) return true;
  if (host !== hostname()) return false;
  const pid = Number(number);
  return pid === process.pid ? !own.has(mark) : !isRunning(pid);
};

/** Takes a mark away that was left; one that another program put there meanwhile is put back. */
const clear = async (mark: string, says: string): Promise<void> => {
  taken += 1;
  const aside = `${mark}-${process.pid}-${taken}`;
  try {
    await rename(mark, aside);
    if ((await readFile(aside, 'utf8')) === says) await rm(aside, { force: true });
    else await rename(aside, mark);
  } catch (error) {
    if (codeOf(error) !== 'ENOENT') throw error;
  }
};

/** Looks at a mark that is in the way, and takes it away where it was left. */
const look = async (mark: string): Promise<void> => {
  try {
    const [{ mtimeMs }, says] = await Promise.all([stat(mark), readFile(mark, 'utf8')]);
    // a clock that was set back makes no mark stand for ever
    if (isLeft(mark, says, Math.abs(Date.now() - mtimeMs))) await clear(mark, says);
  } catch (error) {
    if (codeOf(error) !== 'ENOENT') throw error;
  }
};

/**
 * Does some work on a file that no other program of this kind does meanwhile, on this machine or another that shares the
 * folder: between looking at what a file holds and putting another in its place, nobody else may. What a program that was
 * killed left behind holds nobody up.
 *
 * @throws UserError where another program has held it for ten seconds, and what the work and the operating system throw
 */
export const holdFile = async <Result>(path: string, work: () => Promise<Result>): Promise<Result> => {
  const mark = markOf(path);
  const startMs = performance.now();
  while (!(await take(mark))) {
    await look(mark);
    if (performance.now() - startMs > patienceMs) {
      throw new UserError({
        says: 'Another program is saving this file and does not come to an end; nothing has been changed.',
        place: path,
        whatToDo: 'Try again in a minute.',
      });
    }
    await wait(askEveryMs * Math.random());
  }
  try {
    return await work();
  } finally {
    await rm(mark, { force: true });
    own.delete(mark);
  }
};
