import type { Fault } from '../../fault.ts';
import { withOwnJobs } from '../../work-parts.ts';

/** A hole for a log, bored afloat. */
export const workHoleAfloat: Fault = {
  rule: 'work/hole-afloat',
  about: ['bilge-well'],
  plant: (boat) =>
    withOwnJobs(boat, {
      id: 'bore-for-log',
      name: 'Bore the hull for a log',
      hoursH: 2,
      phase: 7,
      place: 'bilge-well',
      state: 'afloat',
      throughHull: true,
    }),
};
