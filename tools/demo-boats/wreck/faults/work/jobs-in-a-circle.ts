import type { Fault } from '../../fault.ts';
import { withOwnJobs } from '../../work-parts.ts';

/** Step 4 waits for step 7, and step 7 for step 4. */
export const workJobsInACircle: Fault = {
  rule: 'work/jobs-in-a-circle',
  about: [],
  plant: (boat) =>
    withOwnJobs(
      boat,
      { id: 'step-four', name: 'Step 4', hoursH: 1, phase: 9, after: ['own:step-seven'] },
      { id: 'step-seven', name: 'Step 7', hoursH: 1, phase: 9, after: ['own:step-four'] },
    ),
};
