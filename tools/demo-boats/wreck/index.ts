import type { Boat } from '../../../src/core/boat/boat-schema.ts';
import { wreckBase } from './base.ts';
import type { Fault } from './fault.ts';
import { busDropTooLong } from './faults/bus-drop-too-long.ts';
import { busDropsTooLongTogether } from './faults/bus-drops-too-long-together.ts';
import { busEndOutOfReach } from './faults/bus-end-out-of-reach.ts';
import { busLenNotKnown } from './faults/bus-len-not-known.ts';
import { busNoLayoutFound } from './faults/bus-no-layout-found.ts';
import { busTeeNotAllowedHere } from './faults/bus-tee-not-allowed-here.ts';
import { busTooFarEndToEnd } from './faults/bus-too-far-end-to-end.ts';
import { busTooManyDevices } from './faults/bus-too-many-devices.ts';
import { busVoltsTooLow } from './faults/bus-volts-too-low.ts';
import { identitiesSameInstanceTwice } from './faults/identities-same-instance-twice.ts';
import { identitiesSeveralSources } from './faults/identities-several-sources.ts';
import { provenanceManualWithoutNote } from './faults/provenance-manual-without-note.ts';
import { provenanceNeedsRestOnTypicalSheets } from './faults/provenance-needs-rest-on-typical-sheets.ts';
import { readingsNeededButMissing } from './faults/readings-needed-but-missing.ts';
import { trafficBusTooFull } from './faults/traffic-bus-too-full.ts';
import { waysLedThroughUnseenWay } from './faults/ways-led-through-unseen-way.ts';
import { waysNoRouteForLine } from './faults/ways-no-route-for-line.ts';
import { waysPlaceJoinedToNothing } from './faults/ways-place-joined-to-nothing.ts';
import { waysShorterThanStraight } from './faults/ways-shorter-than-straight.ts';
import { wiringBaudDiffers } from './faults/wiring-baud-differs.ts';
import { wiringTwoTalkersOnOnePair } from './faults/wiring-two-talkers-on-one-pair.ts';

/** Every fault planted in the Wreck, one a rule. */
export const faults: readonly Fault[] = [
  busDropTooLong,
  busDropsTooLongTogether,
  busEndOutOfReach,
  busLenNotKnown,
  busNoLayoutFound,
  busTeeNotAllowedHere,
  busTooFarEndToEnd,
  busTooManyDevices,
  busVoltsTooLow,
  identitiesSameInstanceTwice,
  identitiesSeveralSources,
  provenanceManualWithoutNote,
  provenanceNeedsRestOnTypicalSheets,
  readingsNeededButMissing,
  trafficBusTooFull,
  waysLedThroughUnseenWay,
  waysNoRouteForLine,
  waysPlaceJoinedToNothing,
  waysShorterThanStraight,
  wiringBaudDiffers,
  wiringTwoTalkersOnOnePair,
];

/**
 * The Wreck with every fault planted, or her twin without those that break the given rules.
 *
 * @example wreck('bus/drop-too-long') // every fault but the long drop
 */
export const wreck = (...without: readonly string[]): Boat =>
  faults.filter((fault) => !without.includes(fault.rule)).reduce((boat, fault) => fault.plant(boat), wreckBase);
