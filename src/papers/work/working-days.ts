import type { PhaseWork } from '../../core/work-shape.ts';

/** The days of a phase on which somebody works or something was done, in order; what is only waited for takes nobody’s day. */
export const workingDays = ({ order, jobs }: Pick<PhaseWork, 'order' | 'jobs'>): number[] => {
  const work = new Set(jobs.filter(({ slots }) => slots > 0).map(({ id }) => id));
  const starts = (order?.starts ?? []).filter(({ job, hands }) => hands.length > 0 || work.has(job));
  const days = starts.flatMap(({ day, lastDay }) => Array.from({ length: lastDay - day + 1 }, (_, at) => day + at));
  return [...new Set(days)].sort((one, other) => one - other);
};
