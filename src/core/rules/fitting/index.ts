import type { Rule } from '../rule.ts';
import { badlySeenOrReached } from './badly-seen-or-reached.ts';
import { cutFromTypical } from './cut-from-typical.ts';
import { edgeTooNear } from './edge-too-near.ts';
import { hardToRead } from './hard-to-read.ts';
import { holeShows } from './hole-shows.ts';
import { hotBehind } from './hot-behind.ts';
import { ipTooLow } from './ip-too-low.ts';
import { noRoomBehind } from './no-room-behind.ts';
import { panelWeakOrWarped } from './panel-weak-or-warped.ts';
import { screwsInAir } from './screws-in-air.ts';
import { sizesNotKnown } from './sizes-not-known.ts';
import { touchWithWetHands } from './touch-with-wet-hands.ts';
import { webTooNarrow } from './web-too-narrow.ts';

/** The rules of this area. */
export const fittingRules: readonly Rule[] = [
  badlySeenOrReached,
  cutFromTypical,
  edgeTooNear,
  hardToRead,
  holeShows,
  hotBehind,
  ipTooLow,
  noRoomBehind,
  panelWeakOrWarped,
  screwsInAir,
  sizesNotKnown,
  touchWithWetHands,
  webTooNarrow,
];
