import { withUnit } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** NAMEs that differ in the device instance only: 0 and 1. */
const names: Readonly<Record<string, string>> = { 'fuel-port': 'c050960021a00011', 'fuel-stbd': 'c050960121a00012' };

/** The fuel sensors were told apart by their device instance, and so send one number for two tanks. */
export const identitiesDeviceNumberForDataNumber: Fault = {
  rule: 'identities/device-number-for-data-number',
  about: ['fuel-port', 'fuel-stbd'],
  plant: (boat) =>
    Object.entries(names).reduce(
      (after, [id, identity]) => withUnit(after, id, (unit) => ({ ...unit, identity })),
      boat,
    ),
};
