import type { Fault } from '../../fault.ts';
import { busCableLeftOnTheBus } from './cable-left-on-the-bus.ts';
import { busDeviceDrawsTooMuch } from './device-draws-too-much.ts';
import { busDropTooLong } from './drop-too-long.ts';
import { busDropsTooLongTogether } from './drops-too-long-together.ts';
import { busEndOutOfReach } from './end-out-of-reach.ts';
import { busFedFromStartBank } from './fed-from-start-bank.ts';
import { busFedTwice } from './fed-twice.ts';
import { busFuseOverCable } from './fuse-over-cable.ts';
import { busInLineUnitLeaves } from './in-line-unit-leaves.ts';
import { busLenNotKnown } from './len-not-known.ts';
import { busNoFeed } from './no-feed.ts';
import { busNoLayoutFound } from './no-layout-found.ts';
import { busResistanceOutOfRange } from './resistance-out-of-range.ts';
import { busTeeNotAllowedHere } from './tee-not-allowed-here.ts';
import { busTerminatorOnADrop } from './terminator-on-a-drop.ts';
import { busTerminatorsTooManyOrFew } from './terminators-too-many-or-few.ts';
import { busTooFarEndToEnd } from './too-far-end-to-end.ts';
import { busTooManyDevices } from './too-many-devices.ts';
import { busTrunkTooOftenInAWay } from './trunk-too-often-in-a-way.ts';
import { busVoltsTooHigh } from './volts-too-high.ts';
import { busVoltsTooLow } from './volts-too-low.ts';

/** The faults of this area, one a rule. */
export const busFaults: readonly Fault[] = [
  busCableLeftOnTheBus,
  busDeviceDrawsTooMuch,
  busDropTooLong,
  busDropsTooLongTogether,
  busEndOutOfReach,
  busFedFromStartBank,
  busFedTwice,
  busFuseOverCable,
  busInLineUnitLeaves,
  busLenNotKnown,
  busNoFeed,
  busNoLayoutFound,
  busResistanceOutOfRange,
  busTeeNotAllowedHere,
  busTerminatorOnADrop,
  busTerminatorsTooManyOrFew,
  busTooFarEndToEnd,
  busTooManyDevices,
  busTrunkTooOftenInAWay,
  busVoltsTooHigh,
  busVoltsTooLow,
];
