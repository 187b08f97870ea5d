import type { Fault } from '../../fault.ts';
import { workAloftWithLiveRadar } from './aloft-with-live-radar.ts';
import { workDarkForDays } from './dark-for-days.ts';
import { workEssentialsUnsaid } from './essentials-unsaid.ts';
import { workHeadingLineTooEarly } from './heading-line-too-early.ts';
import { workHoleAfloat } from './hole-afloat.ts';
import { workJobNotThere } from './job-not-there.ts';
import { workJobsInACircle } from './jobs-in-a-circle.ts';
import { workLeavesBeforeTrial } from './leaves-before-trial.ts';
import { workNoOrder } from './no-order.ts';
import { workPapersTooLate } from './papers-too-late.ts';
import { workPinnedOutOfTurn } from './pinned-out-of-turn.ts';
import { workPluggedBeforeCured } from './plugged-before-cured.ts';
import { workPumpWithoutFeed } from './pump-without-feed.ts';

/** Faults in the work: its order, what is dark meanwhile, what can hurt somebody. */
export const workFaults: readonly Fault[] = [
  workAloftWithLiveRadar,
  workDarkForDays,
  workEssentialsUnsaid,
  workHeadingLineTooEarly,
  workHoleAfloat,
  workJobNotThere,
  workJobsInACircle,
  workLeavesBeforeTrial,
  workNoOrder,
  workPapersTooLate,
  workPinnedOutOfTurn,
  workPluggedBeforeCured,
  workPumpWithoutFeed,
];
