import type { Fault } from '../../fault.ts';
import { withSettled } from '../../work-parts.ts';

/** The radios are to be on three weeks after the beginning, and the licence takes four. */
export const workPapersTooLate: Fault = {
  rule: 'work/papers-too-late',
  about: ['power-up:radio'],
  plant: (boat) => withSettled(boat, { job: 'power-up:radio', day: '2027-03-22' }),
};
