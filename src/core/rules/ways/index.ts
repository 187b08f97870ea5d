import type { Rule } from '../rule.ts';
import { besideWhatDisturbs } from './beside-what-disturbs.ts';
import { deadCable } from './dead-cable.ts';
import { ledThroughUnseenWay } from './led-through-unseen-way.ts';
import { mastPartedInTheWet } from './mast-parted-in-the-wet.ts';
import { noRouteForLine } from './no-route-for-line.ts';
import { placeJoinedToNothing } from './place-joined-to-nothing.ts';
import { ratedBulkhead } from './rated-bulkhead.ts';
import { settledRoute } from './settled-route.ts';
import { shorterThanStraight } from './shorter-than-straight.ts';
import { wayTooFull } from './way-too-full.ts';

/** The rules of this area. */
export const waysRules: readonly Rule[] = [
  besideWhatDisturbs,
  deadCable,
  ledThroughUnseenWay,
  mastPartedInTheWet,
  noRouteForLine,
  placeJoinedToNothing,
  ratedBulkhead,
  settledRoute,
  shorterThanStraight,
  wayTooFull,
];
