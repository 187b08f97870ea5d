/** Runs something again after a while: sooner at first, then less and less often, for as long as it takes. */
export interface BackOff {
  again(run: () => void): void;
  /** begins with the shortest wait once more */
  reset(): void;
  stop(): void;
}

const firstMs = 500;
const longestMs = 15_000;

/** Starts with a wait of half a second, doubled each time up to 15 s. */
export const backOff = (shortestMs = firstMs): BackOff => {
  let waitMs = shortestMs;
  let timer: NodeJS.Timeout | undefined;
  return {
    again(run) {
      clearTimeout(timer);
      timer = setTimeout(run, waitMs);
      waitMs = Math.min(longestMs, waitMs * 2);
    },
    reset: () => {
      waitMs = shortestMs;
    },
    stop: () => clearTimeout(timer),
  };
};
