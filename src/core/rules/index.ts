import { dropTooLong } from './bus/drop-too-long.ts';
import { dropsTooLongTogether } from './bus/drops-too-long-together.ts';
import { endOutOfReach } from './bus/end-out-of-reach.ts';
import { lenNotKnown } from './bus/len-not-known.ts';
import { noLayoutFound } from './bus/no-layout-found.ts';
import { teeNotAllowedHere } from './bus/tee-not-allowed-here.ts';
import { tooFarEndToEnd } from './bus/too-far-end-to-end.ts';
import { tooManyDevices } from './bus/too-many-devices.ts';
import { voltsTooLow } from './bus/volts-too-low.ts';
import { sameInstanceTwice } from './identities/same-instance-twice.ts';
import { severalSources } from './identities/several-sources.ts';
import { manualWithoutNote } from './provenance/manual-without-note.ts';
import { needsRestOnTypicalSheets } from './provenance/needs-rest-on-typical-sheets.ts';
import { neededButMissing } from './readings/needed-but-missing.ts';
import type { Rule } from './rule.ts';
import { busTooFull } from './traffic/bus-too-full.ts';
import { ledThroughUnseenWay } from './ways/led-through-unseen-way.ts';
import { noRouteForLine } from './ways/no-route-for-line.ts';
import { placeJoinedToNothing } from './ways/place-joined-to-nothing.ts';
import { shorterThanStraight } from './ways/shorter-than-straight.ts';
import { baudDiffers } from './wiring/baud-differs.ts';
import { twoTalkersOnOnePair } from './wiring/two-talkers-on-one-pair.ts';

/** Every rule, by id. A rule joins here, and brings its page, its test and its fault in the wreck. */
export const rules: readonly Rule[] = [
  dropTooLong,
  dropsTooLongTogether,
  endOutOfReach,
  lenNotKnown,
  noLayoutFound,
  teeNotAllowedHere,
  tooFarEndToEnd,
  tooManyDevices,
  voltsTooLow,
  sameInstanceTwice,
  severalSources,
  manualWithoutNote,
  needsRestOnTypicalSheets,
  neededButMissing,
  ledThroughUnseenWay,
  busTooFull,
  noRouteForLine,
  placeJoinedToNothing,
  shorterThanStraight,
  baudDiffers,
  twoTalkersOnOnePair,
];
