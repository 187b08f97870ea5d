import type { Fault } from '../../fault.ts';
import { withSettled } from '../../work-parts.ts';

/** The panel of the bilge pump is opened, and the temporary feed is left out. */
export const workPumpWithoutFeed: Fault = {
  rule: 'work/pump-without-feed',
  about: ['switches'],
  plant: (boat) => withSettled(boat, { job: 'temporary-feed', leftOut: 'The pumps are off for an afternoon only.' }),
};
