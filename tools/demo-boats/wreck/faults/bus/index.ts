import type { Fault } from '../../fault.ts';
import { busDropTooLong } from './drop-too-long.ts';
import { busDropsTooLongTogether } from './drops-too-long-together.ts';
import { busEndOutOfReach } from './end-out-of-reach.ts';
import { busLenNotKnown } from './len-not-known.ts';
import { busNoLayoutFound } from './no-layout-found.ts';
import { busTeeNotAllowedHere } from './tee-not-allowed-here.ts';
import { busTooFarEndToEnd } from './too-far-end-to-end.ts';
import { busTooManyDevices } from './too-many-devices.ts';
import { busVoltsTooLow } from './volts-too-low.ts';

/** The faults of this area, one a rule. */
export const busFaults: readonly Fault[] = [
  busDropTooLong,
  busDropsTooLongTogether,
  busEndOutOfReach,
  busLenNotKnown,
  busNoLayoutFound,
  busTeeNotAllowedHere,
  busTooFarEndToEnd,
  busTooManyDevices,
  busVoltsTooLow,
];
