import type { Rule } from '../rule.ts';
import { aloftWithLiveRadar } from './aloft-with-live-radar.ts';
import { darkForDays } from './dark-for-days.ts';
import { essentialsUnsaid } from './essentials-unsaid.ts';
import { headingLineTooEarly } from './heading-line-too-early.ts';
import { holeAfloat } from './hole-afloat.ts';
import { jobNotThere } from './job-not-there.ts';
import { jobsInACircle } from './jobs-in-a-circle.ts';
import { leavesBeforeTrial } from './leaves-before-trial.ts';
import { noOrder } from './no-order.ts';
import { papersTooLate } from './papers-too-late.ts';
import { pinnedOutOfTurn } from './pinned-out-of-turn.ts';
import { pluggedBeforeCured } from './plugged-before-cured.ts';
import { pumpWithoutFeed } from './pump-without-feed.ts';

/** Rules on the work: the order of the jobs, what is dark meanwhile, what can hurt somebody. */
export const workRules: readonly Rule[] = [
  aloftWithLiveRadar,
  darkForDays,
  essentialsUnsaid,
  headingLineTooEarly,
  holeAfloat,
  jobNotThere,
  jobsInACircle,
  leavesBeforeTrial,
  noOrder,
  papersTooLate,
  pinnedOutOfTurn,
  pluggedBeforeCured,
  pumpWithoutFeed,
];
