import { checkWorkAnswer, compareWorkCosts } from './check-work-answer.ts';
import { brokenJobs } from './check-work-jobs.ts';
import type { WorkCost, WorkProblem, WorkStart } from './problem.ts';

/** The least cost of all orders there are, found by trying every half hour and every hand for every job; absent where none holds. */
export const bruteOrder = (problem: WorkProblem): WorkCost | undefined => {
  const choices = problem.jobs.map((job) => startsOf(problem, job.id));
  let best: WorkCost | undefined;
  const chosen: WorkStart[] = [];
  const visit = (n: number): void => {
    if (n === problem.jobs.length) {
      const cost = costIf(problem, chosen);
      if (cost !== undefined && (best === undefined || compareWorkCosts(cost, best) < 0)) best = cost;
      return;
    }
    for (const start of choices[n] ?? []) {
      chosen.push(start);
      if (brokenJobs({ ...problem, jobs: problem.jobs.slice(0, n + 1) }, chosen).broken.length === 0) visit(n + 1);
      chosen.pop();
    }
  };
  visit(0);
  return best;
};

/** What starts cost where they hold: the checker is asked, and told the cost it says. */
const costIf = (problem: WorkProblem, starts: readonly WorkStart[]): WorkCost | undefined => {
  const nothing = { dark: 0, lastDay: 0, ascents: 0 };
  const answer = { problem: problem.hash, starts, cost: nothing, bound: nothing, status: 'gap' as const, work: 0 };
  const { cost } = checkWorkAnswer(problem, answer);
  return checkWorkAnswer(problem, { ...answer, cost }).broken.length === 0 ? cost : undefined;
};

/** Every beginning of one job that holds by itself. */
const startsOf = (problem: WorkProblem, id: string): WorkStart[] => {
  const alone = { ...problem, jobs: problem.jobs.filter((job) => job.id === id) };
  const hands = problem.hands.map((hand) => hand.id);
  const people = alone.jobs[0]?.slots === 0 ? 0 : (alone.jobs[0]?.people ?? 1);
  const sets =
    people === 0
      ? [[]]
      : people === 1
        ? hands.map((one) => [one])
        : hands.flatMap((one, n) => hands.slice(n + 1).map((other) => [one, other]));
  return problem.days
    .flatMap((_, day) => Array.from({ length: problem.perDay + 1 }, (__, slot) => ({ day, slot })))
    .flatMap((at) => sets.map((own) => ({ job: id, ...at, hands: own })))
    .filter((start) => brokenJobs(alone, [start]).broken.length === 0);
};
