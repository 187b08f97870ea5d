import { type FileHandle, open, readFile, rm, stat } from 'node:fs/promises';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { threadId } from 'node:worker_threads';
import { UserError } from '../../core/boat/user-error.ts';

/** A mark this old was left by a program that is gone, whatever it says; a save takes far less. */
const leftAfterMs = 60_000;
/** A mark without a name in it was left by a program that died while it wrote one; on a busy machine that takes a while. */
const namelessAfterMs = 5_000;
const askEveryMs = 25;
const patienceMs = 10_000;

/** When this process began, by the clock of the machine that nobody sets; all its threads agree to a few milliseconds. */
const bornMs = Math.round(Number(process.hrtime.bigint()) / 1e6 - process.uptime() * 1000);
const sameBirthMs = 100;
let taken = 0;

const codeOf = (error: unknown): unknown => (error instanceof Error && 'code' in error ? error.code : undefined);

const markOf = (path: string): string => join(dirname(path), `.fairlead-${basename(path).slice(0, 100)}.lock`);

const textIn = (mark: string): Promise<string | undefined> => readFile(mark, 'utf8').catch(() => undefined);

/** Makes a file where there is none. */
const made = async (mark: string): Promise<FileHandle | undefined> => {
  try {
    return await open(mark, 'wx');
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return undefined;
    throw error;
  }
};

const away = (mark: string): Promise<void> => rm(mark, { force: true }).catch(() => undefined);

/** Takes an own mark away, and no other’s that stands in its place by now; one that cannot be taken away is one that was left. */
const release = async (mark: string, says: string): Promise<void> => {
  if ((await textIn(mark)) === says) await away(mark);
};

/** Puts the mark there, and gives what stands in it; undefined where there is one. */
const take = async (mark: string): Promise<string | undefined> => {
  const handle = await made(mark);
  if (handle === undefined) return undefined;
  taken += 1;
  const says = `${hostname()} ${process.pid} ${bornMs} ${threadId}-${taken}`;
  try {
    await handle.writeFile(says);
  } catch (error) {
    await away(mark);
    throw error;
  } finally {
    await handle.close();
  }
  // before it had a name, somebody may have taken it for one that was left
  return (await textIn(mark)) === says ? says : undefined;
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
const isGone = (says: string, ageMs: number): boolean => {
  const [host, number, born] = says.split(' ');
  if (says === '') return ageMs > namelessAfterMs;
  if (ageMs > leftAfterMs) return true;
  if (host !== hostname()) return false;
  const pid = Number(number);
  // another that had the same number, and died
  if (pid === process.pid) return !(Math.abs(Number(born) - bornMs) < sameBirthMs);
  return !isRunning(pid);
};

/** Whether a mark was left; not where there is none any more. A clock that was set back makes no mark stand for ever. */
const isLeft = async (mark: string): Promise<boolean> => {
  try {
    const [{ mtimeMs }, says] = await Promise.all([stat(mark), readFile(mark, 'utf8')]);
    return isGone(says, Math.abs(Date.now() - mtimeMs));
  } catch (error) {
    if (codeOf(error) !== 'ENOENT') throw error;
    return false;
  }
};

/**
 * Takes a mark away that was left. One program at a time may, and looks again before: of two that saw the same old mark the
 * slower one would else take away the mark that the quicker one has put there since.
 */
const clear = async (mark: string): Promise<void> => {
  const clearing = `${mark}-0`;
  const handle = await made(clearing);
  if (handle === undefined) {
    const found = await stat(clearing).catch(() => undefined);
    if (found !== undefined && Math.abs(Date.now() - found.mtimeMs) > namelessAfterMs) await away(clearing);
    return;
  }
  try {
    await handle.close();
    if (await isLeft(mark)) await rm(mark, { force: true });
  } finally {
    await away(clearing);
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
  let says: string | undefined;
  for (;;) {
    says = await take(mark);
    if (says !== undefined) break;
    if (await isLeft(mark)) await clear(mark);
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
    await release(mark, says);
  }
};
