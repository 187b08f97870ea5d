import { type LayoutLimit, layoutLimits } from '../facts/layout-limits.ts';
import type { Budget, Problem } from './problem.ts';
import { solveLayout } from './solve-layout.ts';

/** More than any boat has, mm, mA or devices. */
const plenty = 1_000_000_000;

const relaxed: Readonly<Record<LayoutLimit, (problem: Problem) => Problem>> = {
  'device-count': (problem) => ({ ...problem, limits: { ...problem.limits, devices: plenty } }),
  'one-drop': (problem) => ({ ...problem, limits: { ...problem.limits, dropMm: plenty } }),
  'all-drops': (problem) => ({ ...problem, limits: { ...problem.limits, dropsMm: plenty } }),
  length: (problem) => ({
    ...problem,
    grades: problem.grades.map((grade) => ({ ...grade, warnMm: plenty, failMm: plenty })),
  }),
  current: (problem) => ({ ...problem, grades: problem.grades.map((grade) => ({ ...grade, maxMa: plenty })) }),
  volts: (problem) => ({
    ...problem,
    grades: problem.grades.map((grade) => ({ ...grade, microOhmPerM: 0 })),
    feed: { ...problem.feed, leadMicroOhmPerM: 0 },
  }),
  'tee-places': (problem) => ({
    ...problem,
    places: problem.places.map((place) => ({ ...place, tees: true })),
  }),
  'end-places': (problem) => ({ ...problem, places: problem.places.map((place) => ({ ...place, end: true })) }),
};

/** A problem without some of its limits. */
export const withoutLimits = (problem: Problem, limits: readonly LayoutLimit[]): Problem =>
  limits.reduce((left, limit) => relaxed[limit](left), problem);

/** Whether some layout keeps every limit of a problem, as far as the work given tells. */
export const holdsSome = (problem: Problem, budget: Budget): boolean => {
  for (const { status } of solveLayout(problem, budget)) if (status !== 'infeasible') return true;
  return false;
};

/**
 * A smallest set of limits of which no layout keeps all: leave any one of them out and some layout keeps the rest. Found by
 * leaving each out in turn, as far as the work given for each tells. Empty where even without all of them there is no
 * layout: then no way leads to some unit, or nothing feeds the bus.
 */
export const clashingLimits = (problem: Problem, budget: Budget): LayoutLimit[] => {
  let left: readonly LayoutLimit[] = layoutLimits;
  const out = (kept: readonly LayoutLimit[]): LayoutLimit[] => layoutLimits.filter((limit) => !kept.includes(limit));
  if (!holdsSome(withoutLimits(problem, layoutLimits), budget)) return [];
  for (const limit of layoutLimits) {
    const fewer = left.filter((other) => other !== limit);
    if (!holdsSome(withoutLimits(problem, out(fewer)), budget)) left = fewer;
  }
  return [...left];
};
