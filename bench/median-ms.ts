/** How often a piece of work is done before it is timed, and then timed. */
const counts = { warmUps: 40, runs: 60 } as const;

/** The median time of some work, ms, once it has run often enough to be warm. */
export const medianMs = (work: () => void): number => {
  for (let run = 0; run < counts.warmUps; run += 1) work();
  const times = Array.from({ length: counts.runs }, () => {
    const started = performance.now();
    work();
    return performance.now() - started;
  });
  return times.sort((a, b) => a - b)[Math.floor(counts.runs / 2)] ?? 0;
};
