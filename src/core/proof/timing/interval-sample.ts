/** Times between messages of one kind, held in memory that stays flat. */
export interface IntervalSample {
  /** Takes the elapsed time of the next message. */
  add(elapsedUs: number): void;
  /** Median time between two messages, ms; undefined before the second message. */
  medianMs(): number | undefined;
  /** Mean time between two messages, ms; undefined before the second message. */
  meanMs(): number | undefined;
}

/** So many intervals are kept exactly; of more, an even sample. */
const mostKept = 2048;

/** Middle of some numbers: of an even count the mean of the two in the middle. */
const medianOf = (values: readonly number[]): number | undefined => {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[sorted.length >> 1];
  const lower = sorted[(sorted.length - 1) >> 1];
  return upper === undefined || lower === undefined ? undefined : (upper + lower) / 2;
};

/**
 * Starts a sample. Beyond its size each further interval takes a place by lot; the lot is a fixed sequence, so that
 * equal recordings give equal figures (reservoir sampling).
 */
export const startIntervals = (): IntervalSample => {
  const kept: number[] = [];
  let firstUs: number | undefined;
  let lastUs = 0;
  let count = 0;
  let lot = 1;

  const keep = (stepUs: number): void => {
    count += 1;
    if (kept.length < mostKept) {
      kept.push(stepUs);
      return;
    }
    lot = (Math.imul(lot, 1_664_525) + 1_013_904_223) >>> 0;
    const place = Math.floor((lot / 2 ** 32) * count);
    if (place < mostKept) kept[place] = stepUs;
  };

  return {
    add(elapsedUs) {
      if (firstUs === undefined) firstUs = elapsedUs;
      else keep(elapsedUs - lastUs);
      lastUs = elapsedUs;
    },
    medianMs() {
      const median = medianOf(kept);
      return median === undefined ? undefined : median / 1000;
    },
    meanMs: () => (firstUs === undefined || count === 0 ? undefined : (lastUs - firstUs) / count / 1000),
  };
};
