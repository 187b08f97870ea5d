import type { Fault } from '../../fault.ts';
import { identitiesDeviceNumberForDataNumber } from './device-number-for-data-number.ts';
import { identitiesKnownByAddressOnly } from './known-by-address-only.ts';
import { identitiesSameInstanceTwice } from './same-instance-twice.ts';
import { identitiesSameNameTwice } from './same-name-twice.ts';
import { identitiesSeveralSources } from './several-sources.ts';
import { identitiesTankNumberTooHigh } from './tank-number-too-high.ts';

/** The faults of this area, one a rule. */
export const identitiesFaults: readonly Fault[] = [
  identitiesDeviceNumberForDataNumber,
  identitiesKnownByAddressOnly,
  identitiesSameInstanceTwice,
  identitiesSameNameTwice,
  identitiesSeveralSources,
  identitiesTankNumberTooHigh,
];
