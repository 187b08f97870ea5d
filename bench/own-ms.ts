import { existsSync, readFileSync } from 'node:fs';

const path = '/proc/thread-self/schedstat';
const isKnown = existsSync(path);

/**
 * The time this thread was given by the machine, ms; the clock on the wall where the machine does not tell. So neighbours that
 * take turns with it do not count, though those that share its caches do.
 */
export const ownMs = (): number =>
  isKnown ? Number(readFileSync(path, 'utf8').split(' ')[0]) / 1e6 : performance.now();

/** How long some work takes the thread, ms. */
export const workMs = (work: () => void): number => {
  const started = ownMs();
  work();
  return ownMs() - started;
};

/** Of sorted or unsorted values the one below which such a share lies. */
export const shareOf = (values: readonly number[], share: number): number =>
  [...values].sort((one, other) => one - other)[Math.floor((values.length - 1) * share)] ?? 0;
