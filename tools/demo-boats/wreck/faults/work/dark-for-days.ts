import type { Fault } from '../../fault.ts';
import { withOwnJobs } from '../../work-parts.ts';

/** The sounder is out for twenty days. */
export const workDarkForDays: Fault = {
  rule: 'work/dark-for-days',
  about: [],
  plant: (boat) =>
    withOwnJobs(boat, {
      id: 'mend-sounder',
      name: 'The sounder to its maker and back',
      hoursH: 160,
      phase: 5,
      takes: ['depth'],
    }),
};
