import type { Rule } from '../rule.ts';
import { dropTooLong } from './drop-too-long.ts';
import { dropsTooLongTogether } from './drops-too-long-together.ts';
import { endOutOfReach } from './end-out-of-reach.ts';
import { lenNotKnown } from './len-not-known.ts';
import { noLayoutFound } from './no-layout-found.ts';
import { teeNotAllowedHere } from './tee-not-allowed-here.ts';
import { tooFarEndToEnd } from './too-far-end-to-end.ts';
import { tooManyDevices } from './too-many-devices.ts';
import { voltsTooLow } from './volts-too-low.ts';

/** The rules of this area. */
export const busRules: readonly Rule[] = [
  dropTooLong,
  dropsTooLongTogether,
  endOutOfReach,
  lenNotKnown,
  noLayoutFound,
  teeNotAllowedHere,
  tooFarEndToEnd,
  tooManyDevices,
  voltsTooLow,
];
