import type { Part, Progress } from '../../core/work/progress.ts';
import { printCount } from '../lists/print-figure.ts';
import { dateWords } from './day-words.ts';

/** One measure of how far the work has come. */
export interface ProgressRow {
  readonly id: 'jobs' | 'cables' | 'readings';
  readonly says: string;
  readonly part: Part;
}

/** Jobs, cables pulled and readings proved, each as done of all. */
export const progressRows = ({ jobs, cables, readings }: Progress): ProgressRow[] => [
  { id: 'jobs', says: `${jobs.done} of ${printCount(jobs.total, 'job')} done`, part: jobs },
  { id: 'cables', says: `${cables.done} of ${printCount(cables.total, 'cable')} pulled`, part: cables },
  { id: 'readings', says: `${readings.done} of ${printCount(readings.total, 'reading')} proved`, part: readings },
];

/** How many days are left, and when the last of them is. */
export const daysLeftWords = ({ daysLeft, lastOn, jobs }: Progress): string => {
  if (jobs.total > 0 && jobs.done === jobs.total) return 'All jobs are done.';
  if (daysLeft === undefined) return 'No order yet, so nobody can say how many days are left.';
  return `${printCount(daysLeft, 'day')} of work left${lastOn === undefined ? '' : `, the last on ${dateWords(lastOn)}`}.`;
};
