import type { Fault } from '../../fault.ts';
import { remoteDefaultPassword } from './default-password.ts';
import { remoteGuestWifiNotApart } from './guest-wifi-not-apart.ts';
import { remotePilotFromAPhone } from './pilot-from-a-phone.ts';
import { remoteTwoAddressGivers } from './two-address-givers.ts';
import { remoteWritesUnknown } from './writes-unknown.ts';
import { remoteWritesWithoutNeed } from './writes-without-need.ts';

/** The faults of this area, one a rule. */
export const remoteFaults: readonly Fault[] = [
  remoteDefaultPassword,
  remoteGuestWifiNotApart,
  remotePilotFromAPhone,
  remoteTwoAddressGivers,
  remoteWritesUnknown,
  remoteWritesWithoutNeed,
];
