import type { Again, PhoneStore } from './phone-state.ts';

/** While the laptop is heard it is asked so often, for others write too. */
const everyMs = 8_000;
const firstMs = 1_000;
const longestMs = 30_000;
/** However long the laptop asks to be left alone, it is tried again after this. */
const mostAfterMs = 600_000;

/** Calls `run` after a while; gives what stops it. */
export type Later = (run: () => void, ms: number) => () => void;

/**
 * Keeps a store in step with the laptop: again and again while it answers, less and less often while it does not, at once
 * when `now` is called.
 */
export const keepSyncing = (
  { state, sync }: Pick<PhoneStore, 'state' | 'sync'>,
  later: Later,
): { readonly now: () => void; readonly stop: () => void } => {
  let failed = 0;
  let isStopped = false;
  let isAskedAgain = false;
  let isAsking = false;
  let cancel = (): void => undefined;

  const waitMs = (afterS: number | undefined): number => {
    if (failed === 0) return everyMs;
    const own = Math.min(longestMs, firstMs * 2 ** (failed - 1));
    return Math.max(own, Math.min(mostAfterMs, (afterS ?? 0) * 1000));
  };

  const ask = async (): Promise<void> => {
    if (isAsking) {
      isAskedAgain = true;
      return;
    }
    cancel();
    isAsking = true;
    // a store that throws would be a fault of ours; what waits stays on the shelf, and is tried again
    const { afterS } = await sync().catch((): Again => ({}));
    isAsking = false;
    if (isStopped) return;
    failed = state().standing === 'heard' ? 0 : failed + 1;
    const wait = isAskedAgain && failed === 0 ? 0 : waitMs(afterS);
    isAskedAgain = false;
    cancel = later(() => void ask(), wait);
  };

  return {
    now: () => void ask(),
    stop() {
      isStopped = true;
      cancel();
    },
  };
};
