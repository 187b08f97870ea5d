import type { Fault } from '../../fault.ts';
import { withSettled } from '../../work-parts.ts';

/** Somebody is up the mast on the day the radar is first switched on. */
export const workAloftWithLiveRadar: Fault = {
  rule: 'work/aloft-with-live-radar',
  about: ['arch-radar'],
  plant: (boat) =>
    withSettled(boat, { job: 'mast-pull:mast-heel', day: '2027-03-20' }, { job: 'power-up:radar', day: '2027-03-20' }),
};
