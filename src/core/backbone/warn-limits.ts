import type { BusEntry } from '../plan-shape.ts';
import type { Problem } from './problem.ts';

/** A problem held to its warn limits, within which a bus has something in hand. */
export const withWarnLimits = ({ grades, feed, ...problem }: Problem): Problem => ({
  ...problem,
  grades: grades.map((grade) => ({ ...grade, failMm: Math.min(grade.failMm, grade.warnMm) })),
  feed: {
    ...feed,
    ...(feed.lostMv === undefined ? {} : { lostMv: { warn: feed.lostMv.warn, fail: feed.lostMv.warn } }),
  },
});

/** Less than a limit can be told apart by, in metres and volts. */
const hair = 1e-9;

/** Whether a bus as planned goes beyond its warn limits. */
export const isBeyondWarnLimits = (
  problem: Problem,
  { grade: gradeId, farthestM, volts }: Pick<BusEntry, 'grade' | 'farthestM' | 'volts'>,
): boolean => {
  const first = withWarnLimits(problem);
  const grade = first.grades.find(({ id }) => id === gradeId);
  const mostLostV = (first.feed.lostMv?.warn ?? Number.POSITIVE_INFINITY) / 1000;
  return (
    (grade !== undefined && farthestM * 1000 > grade.failMm + hair) ||
    volts.some(({ dropV }) => dropV > mostLostV + hair)
  );
};
