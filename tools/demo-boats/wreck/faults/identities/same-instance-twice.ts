import { withUnit } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** Both fuel sensors send instance 0, so the two tanks overwrite each other on the display. */
export const identitiesSameInstanceTwice: Fault = {
  rule: 'identities/same-instance-twice',
  about: ['nav', 'fuel-port', 'fuel-stbd'],
  plant: (boat) =>
    withUnit(boat, 'fuel-stbd', (unit) => ({
      ...unit,
      instances: [{ port: 'n2k', reading: 'fuel-level', instance: 0 }],
    })),
};
