import type { Fault } from '../../fault.ts';
import { withSettled } from '../../work-parts.ts';

/** Old units go ashore a week before the sea trial. */
export const workLeavesBeforeTrial: Fault = {
  rule: 'work/leaves-before-trial',
  about: ['through-display'],
  plant: (boat) =>
    withSettled(boat, { job: 'leaving:2', day: '2027-09-20' }, { job: 'sea-trial:2', day: '2027-09-27' }),
};
