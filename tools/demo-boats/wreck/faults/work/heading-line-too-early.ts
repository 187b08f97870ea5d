import type { Fault } from '../../fault.ts';
import { withSettled } from '../../work-parts.ts';

/** The radar is aligned a day before the heading sensor is swung. */
export const workHeadingLineTooEarly: Fault = {
  rule: 'work/heading-line-too-early',
  about: ['arch-radar'],
  plant: (boat) =>
    withSettled(boat, { job: 'sea-trial:heading', day: '2027-05-11' }, { job: 'sea-trial:radar', day: '2027-05-10' }),
};
