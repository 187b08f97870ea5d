import type { Job } from '../../work-shape.ts';
import { jobName } from './job-name.ts';
import { phaseRule } from './phase-rule.ts';

/** Jobs that wait for each other, in the order in which they do; what is left out waits for nobody. */
const circlesIn = (jobs: readonly Job[]): Job[][] => {
  const open = new Map(jobs.filter(({ leftOut }) => leftOut === undefined).map((job) => [job.id, job]));
  const done = new Set<string>();
  const found: Job[][] = [];
  const walk = (job: Job, path: readonly Job[]): void => {
    const at = path.indexOf(job);
    if (at >= 0) {
      found.push(path.slice(at));
      return;
    }
    if (done.has(job.id)) return;
    for (const { job: id } of job.after) {
      const first = open.get(id);
      if (first !== undefined && found.length === 0) walk(first, [...path, job]);
    }
    done.add(job.id);
  };
  for (const job of open.values()) walk(job, []);
  return found;
};

/** Jobs that wait for each other never begin. */
export const jobsInACircle = phaseRule({
  id: 'work/jobs-in-a-circle',
  level: 'fault',
  title: 'Jobs wait for each other in a circle.',
  sources: ['geometry', 'choice-work-rules'],
  find: ({ index, phase: { jobs } }) =>
    circlesIn(jobs).map((circle) => ({
      about: circle.map(({ id }) => id),
      says: `None of these ever begins, for each waits for the next: ${circle.map((job) => jobName(index, job)).join('; ')}; and that one for the first.`,
      cure: 'Take one of the waits out that you put in yourself.',
    })),
});
