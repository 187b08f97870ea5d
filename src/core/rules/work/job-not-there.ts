import type { Rule } from '../rule.ts';
import { phasesOf } from './work-links.ts';

/** Something is settled of a job that the plan has not: it does nothing. */
export const jobNotThere: Rule = {
  id: 'work/job-not-there',
  level: 'doubt',
  title: 'Something is settled of a job that is not there.',
  sources: ['choice-work-rules'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const { jobs = [], own = [] } = index.boat.work ?? {};
    const phases = phasesOf(plan);
    if (phases.length === 0) return [];
    const known = new Set(phases.flatMap((phase) => phase.jobs.map(({ id }) => id)));
    const named = [
      ...jobs.flatMap(({ job, after = [] }) => [job, ...after]),
      ...own.flatMap(({ after = [] }) => after),
    ];
    const lost = [...new Set(named.filter((id) => !known.has(id)))];
    if (lost.length === 0) return [];
    return [
      {
        about: lost,
        says: `The boat file settles something of ${lost.length === 1 ? 'a job that is' : 'jobs that are'} not in the plan: ${lost.join(', ')}. It does nothing.`,
        cure: 'Take it out, or say it of the job that has taken its place.',
      },
    ];
  },
};
