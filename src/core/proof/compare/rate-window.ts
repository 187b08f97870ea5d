import { proofLimits } from '../../facts/proof-limits.ts';

/** Whether a message comes as often as planned, within half to twice its interval; the edges belong to it. */
export const rateVerdict = ({
  plannedMs,
  seenMs,
}: {
  plannedMs: number;
  seenMs: number;
}): 'right' | 'too-often' | 'too-seldom' => {
  if (seenMs < plannedMs * proofLimits.intervalLeast.value) return 'too-often';
  return seenMs > plannedMs * proofLimits.intervalMost.value ? 'too-seldom' : 'right';
};

/** Whether a recording is long enough to miss what comes once in an interval; one without time is taken to be. */
export const isLongEnough = (durationS: number | undefined, everyMs: number): boolean =>
  durationS === undefined || durationS * 1000 >= everyMs * proofLimits.intervalsToMiss.value;
