import type { Fault } from '../../fault.ts';
import { withOwnJobs, withSettled } from '../../work-parts.ts';

/** The second coat is settled for the day before the first. */
export const workPinnedOutOfTurn: Fault = {
  rule: 'work/pinned-out-of-turn',
  about: [],
  plant: (boat) =>
    withSettled(
      withOwnJobs(
        boat,
        { id: 'first-coat', name: 'First coat', hoursH: 2, phase: 6 },
        { id: 'second-coat', name: 'Second coat', hoursH: 2, phase: 6, after: ['own:first-coat'] },
      ),
      { job: 'own:first-coat', day: '2028-05-10' },
      { job: 'own:second-coat', day: '2028-05-09' },
    ),
};
