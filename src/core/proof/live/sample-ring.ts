/** One point of a curve. */
export interface Sample {
  readonly atMs: number;
  readonly value: number;
}

/** The last minutes of one number, in memory that does not grow. */
export interface SampleRing {
  add(sample: Sample): void;
  /** from the oldest on */
  all(): readonly Sample[];
}

/** A curve of five minutes with two points a second (project choice). */
export const curveMs = 300_000;
const leastGapMs = 500;
const most = curveMs / leastGapMs;

/** Starts with no sample. What comes faster than twice a second is left out; a clock set back begins the curve anew. */
export const startSampleRing = (): SampleRing => {
  const samples: Sample[] = [];
  let oldest = 0;
  return {
    add(sample) {
      const last = samples[(oldest + samples.length - 1) % most];
      const gapMs = last === undefined ? leastGapMs : sample.atMs - last.atMs;
      if (gapMs < 0) {
        samples.length = 0;
        oldest = 0;
      } else if (gapMs < leastGapMs) return;
      if (samples.length < most) samples.push(sample);
      else {
        samples[oldest] = sample;
        oldest = (oldest + 1) % most;
      }
    },
    all: () => [...samples.slice(oldest), ...samples.slice(0, oldest)],
  };
};
