import type { Fault } from '../../fault.ts';
import { fittingBadlySeenOrReached } from './badly-seen-or-reached.ts';
import { fittingCutFromTypical } from './cut-from-typical.ts';
import { fittingEdgeTooNear } from './edge-too-near.ts';
import { fittingHardToRead } from './hard-to-read.ts';
import { fittingHoleShows } from './hole-shows.ts';
import { fittingHotBehind } from './hot-behind.ts';
import { fittingIpTooLow } from './ip-too-low.ts';
import { fittingNoRoomBehind } from './no-room-behind.ts';
import { fittingPanelWeakOrWarped } from './panel-weak-or-warped.ts';
import { fittingScrewsInAir } from './screws-in-air.ts';
import { fittingSizesNotKnown } from './sizes-not-known.ts';
import { fittingTouchWithWetHands } from './touch-with-wet-hands.ts';
import { fittingWebTooNarrow } from './web-too-narrow.ts';

/** The faults of this area, one a rule. */
export const fittingFaults: readonly Fault[] = [
  fittingBadlySeenOrReached,
  fittingCutFromTypical,
  fittingEdgeTooNear,
  fittingHardToRead,
  fittingHoleShows,
  fittingHotBehind,
  fittingIpTooLow,
  fittingNoRoomBehind,
  fittingPanelWeakOrWarped,
  fittingScrewsInAir,
  fittingSizesNotKnown,
  fittingTouchWithWetHands,
  fittingWebTooNarrow,
];
