import type { Rule } from '../rule.ts';
import { deviceNumberForDataNumber } from './device-number-for-data-number.ts';
import { knownByAddressOnly } from './known-by-address-only.ts';
import { sameInstanceTwice } from './same-instance-twice.ts';
import { sameNameTwice } from './same-name-twice.ts';
import { severalSources } from './several-sources.ts';
import { tankNumberTooHigh } from './tank-number-too-high.ts';

/** The rules of this area. */
export const identitiesRules: readonly Rule[] = [
  deviceNumberForDataNumber,
  knownByAddressOnly,
  sameInstanceTwice,
  sameNameTwice,
  severalSources,
  tankNumberTooHigh,
];
