import type { Rule } from '../rule.ts';
import { cableLeftOnTheBus } from './cable-left-on-the-bus.ts';
import { deviceDrawsTooMuch } from './device-draws-too-much.ts';
import { dropTooLong } from './drop-too-long.ts';
import { dropsTooLongTogether } from './drops-too-long-together.ts';
import { endOutOfReach } from './end-out-of-reach.ts';
import { fedFromStartBank } from './fed-from-start-bank.ts';
import { fedTwice } from './fed-twice.ts';
import { fuseOverCable } from './fuse-over-cable.ts';
import { inLineUnitLeaves } from './in-line-unit-leaves.ts';
import { lenNotKnown } from './len-not-known.ts';
import { noFeed } from './no-feed.ts';
import { noLayoutFound } from './no-layout-found.ts';
import { resistanceOutOfRange } from './resistance-out-of-range.ts';
import { teeNotAllowedHere } from './tee-not-allowed-here.ts';
import { terminatorOnADrop } from './terminator-on-a-drop.ts';
import { terminatorsTooManyOrFew } from './terminators-too-many-or-few.ts';
import { tooFarEndToEnd } from './too-far-end-to-end.ts';
import { tooManyDevices } from './too-many-devices.ts';
import { trunkTooOftenInAWay } from './trunk-too-often-in-a-way.ts';
import { voltsTooHigh } from './volts-too-high.ts';
import { voltsTooLow } from './volts-too-low.ts';

/** The rules of this area. */
export const busRules: readonly Rule[] = [
  cableLeftOnTheBus,
  deviceDrawsTooMuch,
  dropTooLong,
  dropsTooLongTogether,
  endOutOfReach,
  fedFromStartBank,
  fedTwice,
  fuseOverCable,
  inLineUnitLeaves,
  lenNotKnown,
  noFeed,
  noLayoutFound,
  resistanceOutOfRange,
  teeNotAllowedHere,
  terminatorOnADrop,
  terminatorsTooManyOrFew,
  tooFarEndToEnd,
  tooManyDevices,
  trunkTooOftenInAWay,
  voltsTooHigh,
  voltsTooLow,
];
