import { withUnit } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** The display was copied from the depth sensor, NAME and all. */
export const identitiesSameNameTwice: Fault = {
  rule: 'identities/same-name-twice',
  about: ['depth', 'display'],
  plant: (boat) => {
    const identity = 'c0788c00e7e04312';
    const one = withUnit(boat, 'depth', (unit) => ({ ...unit, identity }));
    return withUnit(one, 'display', (unit) => ({ ...unit, identity }));
  },
};
