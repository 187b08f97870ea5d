import { costOfSpots, type SpotCost } from './darkness.ts';
import { daySlots, type Ground } from './ground.ts';
import type { Slices } from './slices.ts';
import type { Spot } from './spot.ts';
import type { Timeline } from './timeline.ts';

/** Up to which clock a job may end for all that waits for it; the end of the calendar where nothing does. */
const latestEnd = ({ jobs, days }: Ground, job: number, spots: readonly (Spot | undefined)[]): number => {
  let latest = days * daySlots;
  for (const { job: after, wait } of jobs[job]?.succs ?? []) {
    const spot = spots[after];
    if (spot !== undefined) latest = Math.min(latest, spot.begin - wait);
  }
  return latest;
};

const inOrder = (spots: readonly (Spot | undefined)[]): { job: number; spot: Spot }[] =>
  spots
    .flatMap((spot, job) => (spot === undefined ? [] : [{ job, spot }]))
    .sort((a, b) => a.spot.begin - b.spot.begin || a.job - b.job);

/**
 * Moves what puts something out as late as what follows allows, and everything else as early as it goes, which takes darkness
 * and days off an order and never adds any. What ends a way is no later than the last day of the order.
 */
export const tighten = (timeline: Timeline, slices: Slices): SpotCost => {
  const { ground, spots } = timeline;
  const horizon = Math.max(0, ...spots.map((spot) => spot?.end ?? 0));
  for (const { job, spot } of inOrder(spots).reverse()) {
    const own = ground.jobs[job];
    if (own === undefined || own.gives || own.days > 0) continue;
    const isKept = !own.ends && (slices.groups[slices.groupOf[job] ?? job]?.length ?? 1) < 2;
    if (isKept) continue;
    timeline.lift(job);
    const latest = Math.min(horizon, latestEnd(ground, job, spots)) - own.slots;
    timeline.put(job, timeline.findLast(job, spot.begin, latest) ?? spot);
  }
  for (const { job, spot } of inOrder(spots)) {
    if (ground.jobs[job]?.ends === true) continue;
    timeline.lift(job);
    timeline.put(job, timeline.find(job, timeline.ready(job), spot.begin) ?? spot);
  }
  return costOfSpots(ground, spots);
};
