import type { Fault } from '../../fault.ts';
import { waysBesideWhatDisturbs } from './beside-what-disturbs.ts';
import { waysDeadCable } from './dead-cable.ts';
import { waysLedThroughUnseenWay } from './led-through-unseen-way.ts';
import { waysMastPartedInTheWet } from './mast-parted-in-the-wet.ts';
import { waysNoRouteForLine } from './no-route-for-line.ts';
import { waysPlaceJoinedToNothing } from './place-joined-to-nothing.ts';
import { waysRatedBulkhead } from './rated-bulkhead.ts';
import { waysSettledRoute } from './settled-route.ts';
import { waysShorterThanStraight } from './shorter-than-straight.ts';
import { waysWayTooFull } from './way-too-full.ts';

/** The faults of this area, one a rule. */
export const waysFaults: readonly Fault[] = [
  waysMastPartedInTheWet,
  waysBesideWhatDisturbs,
  waysDeadCable,
  waysLedThroughUnseenWay,
  waysNoRouteForLine,
  waysPlaceJoinedToNothing,
  waysRatedBulkhead,
  waysSettledRoute,
  waysShorterThanStraight,
  waysWayTooFull,
];
