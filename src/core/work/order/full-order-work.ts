import type { WorkBudget } from './problem.ts';

/** The work given to the order of one phase where nobody waits with a stopwatch; the same at the terminal and in the app. */
export const fullOrderWork: WorkBudget = { work: 1_200_000 };
