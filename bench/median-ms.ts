import { shareOf, workMs } from './own-ms.ts';

/** How often a piece of work is done before it is timed, and then timed. */
const counts = { warmUps: 40, runs: 60 } as const;

/** The median time of some work, ms, once it has run often enough to be warm. */
export const medianMs = (work: () => void): number => {
  for (let run = 0; run < counts.warmUps; run += 1) work();
  return shareOf(
    Array.from({ length: counts.runs }, () => workMs(work)),
    0.5,
  );
};
