import { existsSync, readFileSync } from 'node:fs';

const path = '/proc/thread-self/schedstat';
const isKnown = existsSync(path);

/**
 * The time this thread was given by the machine, ms; the clock on the wall where the machine does not tell. So neighbours that
 * take turns with it do not count, though those that share its caches do.
 *
 * The machine brings that figure up to date where threads take turns, some 4 ms apart, and where a program asks how much of the
 * processor it had. So that is asked first; without it two readings 12 ms apart are wrong by up to 4 ms either way.
 */
export const ownMs = (): number => {
  if (!isKnown) return performance.now();
  process.cpuUsage();
  return Number(readFileSync(path, 'utf8').split(' ')[0]) / 1e6;
};

/** How long some work takes the thread, ms. */
export const workMs = (work: () => void): number => {
  const started = ownMs();
  work();
  return ownMs() - started;
};

/** Of sorted or unsorted values the one below which such a share lies. */
export const shareOf = (values: readonly number[], share: number): number =>
  [...values].sort((one, other) => one - other)[Math.floor((values.length - 1) * share)] ?? 0;
