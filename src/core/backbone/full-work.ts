import type { Budget } from './problem.ts';

/** The work given to one bus where nobody waits with a stopwatch; the same at the terminal and in the app, so that both come to the same plan. */
export const fullWork: Budget = { work: 1_000_000 };
