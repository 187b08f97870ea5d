import type { Fault } from '../../fault.ts';
import { withOwnJobs, withWork } from '../../work-parts.ts';

/** The hull is to be scrubbed ashore, and the days ashore are long over. */
export const workNoOrder: Fault = {
  rule: 'work/no-order',
  about: [],
  plant: (boat) =>
    withOwnJobs(
      withWork(boat, (work) => ({ ...work, ashore: [{ from: '2026-01-05', to: '2026-01-09' }] })),
      { id: 'scrub', name: 'Scrub the hull', hoursH: 6, phase: 8, state: 'ashore' },
    ),
};
