import { type LayoutLimit, layoutLimits } from '../facts/layout-limits.ts';
import type { Budget, Problem } from './problem.ts';
import { keptLayout } from './solve-layout.ts';

/** More than any boat has, mm, mA or devices. */
const plenty = 1_000_000_000;

const more = (allowed: number, times: number): number => Math.min(plenty, Math.floor(allowed * times));

const loosenedVolts = ({ feed, devices, ...problem }: Problem, times: number): Problem => {
  const { lostMv } = feed;
  return {
    ...problem,
    devices: devices.map((device) => ({
      ...device,
      minMv: Math.min(device.minMv, feed.mv - more(feed.mv - device.minMv, times)),
    })),
    feed: {
      ...feed,
      ...(lostMv === undefined ? {} : { lostMv: { warn: more(lostMv.warn, times), fail: more(lostMv.fail, times) } }),
    },
  };
};

const withoutVolts = ({ feed, ...problem }: Problem): Problem => ({
  ...problem,
  devices: problem.devices.map((device) => ({ ...device, minMv: 0 })),
  grades: problem.grades.map((grade) => ({ ...grade, microOhmPerM: 0 })),
  feed: { ...feed, mv: Math.max(0, feed.mv), leadMicroOhmPerM: 0 },
});

const loosened: Readonly<Record<LayoutLimit, (problem: Problem, times: number) => Problem>> = {
  'device-count': ({ limits, ...problem }, times) => ({
    ...problem,
    limits: { ...limits, devices: more(limits.devices, times) },
  }),
  'one-drop': ({ limits, ...problem }, times) => ({
    ...problem,
    limits: { ...limits, dropMm: more(limits.dropMm, times) },
  }),
  'all-drops': ({ limits, ...problem }, times) => ({
    ...problem,
    limits: { ...limits, dropsMm: more(limits.dropsMm, times) },
  }),
  length: ({ grades, ...problem }, times) => ({
    ...problem,
    grades: grades.map((grade) => ({
      ...grade,
      warnMm: more(grade.warnMm, times),
      failMm: more(grade.failMm, times),
    })),
  }),
  current: ({ grades, ...problem }, times) => ({
    ...problem,
    grades: grades.map((grade) => ({ ...grade, maxMa: more(grade.maxMa, times) })),
  }),
  volts: (problem, times) =>
    times === Number.POSITIVE_INFINITY ? withoutVolts(problem) : loosenedVolts(problem, times),
  'tee-places': ({ places, ...problem }) => ({ ...problem, places: places.map((place) => ({ ...place, tees: true })) }),
  'end-places': ({ places, ...problem }) => ({ ...problem, places: places.map((place) => ({ ...place, end: true })) }),
};

/** A problem one limit of which allows `times` as much; places where tees may stand or the trunk may end are then all places. */
export const withLooser = (
  problem: Problem,
  { limit, times }: { readonly limit: LayoutLimit; readonly times: number },
): Problem => loosened[limit](problem, times);

/** A problem without some of its limits. */
export const withoutLimits = (problem: Problem, limits: readonly LayoutLimit[]): Problem =>
  limits.reduce((left, limit) => withLooser(left, { limit, times: Number.POSITIVE_INFINITY }), problem);

/** Whether some layout keeps every limit of a problem, as far as the work given tells. */
export const holdsSome = (problem: Problem, budget: Budget): boolean =>
  keptLayout(problem, { ...budget, isFirstEnough: true }).layout !== undefined;

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

/**
 * Smallest sets of limits that clash, one beside another: without all of them some layout keeps the rest. More than one
 * where more than one thing is wrong. Empty as `clashingLimits` is.
 */
export const allClashes = (problem: Problem, budget: Budget): readonly (readonly LayoutLimit[])[] => {
  const clashes: (readonly LayoutLimit[])[] = [];
  for (let left = problem; !holdsSome(left, budget); left = withoutLimits(problem, clashes.flat())) {
    const clash = clashingLimits(left, budget).filter((limit) => !clashes.flat().includes(limit));
    if (clash.length === 0) return clashes;
    clashes.push(clash);
  }
  return clashes;
};
