import type { WorkProblem } from './problem.ts';
import { daySlots, workGround } from './solver/ground.ts';
import { earliestEnds, headsOf } from './solver/heads.ts';
import { orderOf } from './solver/reach.ts';

/** Jobs that come to no end within the calendar though each before them does, whoever else wants the hands. */
export const neverInTime = (problem: WorkProblem): string[] => {
  const ground = workGround(problem);
  const order = orderOf(ground.jobs.map(({ succs }) => succs.map(({ job }) => job)));
  if (order === undefined) return [];
  const ends = earliestEnds(ground, headsOf(ground), order);
  const isLate = (job: number): boolean => (ends[job] ?? 0) > ground.days * daySlots;
  return problem.jobs
    .filter((_, n) => isLate(n) && !(ground.jobs[n]?.preds ?? []).some(({ job }) => isLate(job)))
    .map(({ id }) => id);
};
