import { remember } from '../../boat/remember.ts';
import type { WorkAnswer, WorkProblem } from './problem.ts';
import { solveWork, someOrder } from './solve-work.ts';

/** Work for an order while a person waits for a plan: places given, for each job of it. */
const hurriedPlaces = 14;
const leastPlaces = 200;
/** What is tried before it is said that there is no order. */
const lastTry = 40_000;

/**
 * A good order in a moment, for a plan that was given none: status `quick`, or `proven` where nothing can be better. Absent
 * where none was found that keeps everything.
 */
export const quickAnswer: (problem: WorkProblem) => WorkAnswer | undefined = remember({
  most: 24,
  keyOf: ({ hash }: WorkProblem) => hash,
  find: (problem) => {
    const work = leastPlaces + hurriedPlaces * problem.jobs.length;
    const last = [...solveWork(problem, { work })].at(-1) ?? someOrder(problem, { work: lastTry });
    return last === undefined || last.status === 'proven' ? last : { ...last, status: 'quick' };
  },
});
