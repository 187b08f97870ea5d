import type { Fault } from '../../fault.ts';
import { withSettled } from '../../work-parts.ts';

/** An antenna is plugged in on the day its gland is sealed. */
export const workPluggedBeforeCured: Fault = {
  rule: 'work/plugged-before-cured',
  about: ['w11'],
  plant: (boat) =>
    withSettled(boat, { job: 'seal:w11', day: '2027-03-10' }, { job: 'connect:gnss-moved', day: '2027-03-10' }),
};
