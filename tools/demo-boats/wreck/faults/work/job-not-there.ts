import type { Fault } from '../../fault.ts';
import { withSettled } from '../../work-parts.ts';

/** Something is settled of a unit that was never bought. */
export const workJobNotThere: Fault = {
  rule: 'work/job-not-there',
  about: [],
  plant: (boat) => withSettled(boat, { job: 'mount:never-bought', hoursH: 2 }),
};
