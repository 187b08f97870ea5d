import { brokenJobs, type Lying } from './check-work-jobs.ts';
import type { WorkProblem, WorkStart } from './problem.ts';

/** One beginning of a job with certain hands, and where the job lies then. */
export interface Choice extends Lying {
  readonly start: WorkStart;
}

/** Every beginning of one job that holds by itself, by the checker. */
export const choicesOf = (problem: WorkProblem, id: string): Choice[] => {
  const alone = { ...problem, jobs: problem.jobs.filter((job) => job.id === id) };
  const hands = problem.hands.map((hand) => hand.id);
  const people = alone.jobs[0]?.slots === 0 ? 0 : (alone.jobs[0]?.people ?? 1);
  const pairs = hands.flatMap((one, n) => hands.slice(n + 1).map((other) => [one, other]));
  const sets = [[[]], hands.map((one) => [one]), pairs][people] ?? [];
  return problem.days
    .flatMap((_, day) => Array.from({ length: problem.perDay + 1 }, (__, slot) => ({ day, slot })))
    .flatMap((at) => sets.map((own) => ({ job: id, ...at, hands: own })))
    .flatMap((start) => {
      const { broken, lies } = brokenJobs(alone, [start]);
      const lying = lies.get(id);
      return broken.length > 0 || lying === undefined ? [] : [{ ...lying, start }];
    });
};
