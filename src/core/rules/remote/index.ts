import type { Rule } from '../rule.ts';
import { defaultPassword } from './default-password.ts';
import { guestWifiNotApart } from './guest-wifi-not-apart.ts';
import { pilotFromAPhone } from './pilot-from-a-phone.ts';
import { twoAddressGivers } from './two-address-givers.ts';
import { writesUnknown } from './writes-unknown.ts';
import { writesWithoutNeed } from './writes-without-need.ts';

/** The rules of this area. */
export const remoteRules: readonly Rule[] = [
  defaultPassword,
  guestWifiNotApart,
  pilotFromAPhone,
  twoAddressGivers,
  writesUnknown,
  writesWithoutNeed,
];
