import type { Ground } from './ground.ts';
import type { Spot } from './spot.ts';
import { Timeline } from './timeline.ts';

/**
 * Jobs one after another: each time the one that can begin soonest once the last is done, of several the first of the list, with
 * no thought of what is dark. Absent where that does not come to an end.
 */
export const plainSpots = (ground: Ground): readonly Spot[] | undefined => {
  const timeline = new Timeline(ground);
  const isReady = (job: number): boolean =>
    (ground.jobs[job]?.preds ?? []).every((link) => timeline.spots[link.job] !== undefined);
  let clock = 0;
  for (let placed = 0; placed < ground.jobs.length; placed += 1) {
    let next: { readonly job: number; readonly spot: Spot } | undefined;
    for (let job = 0; job < ground.jobs.length; job += 1) {
      if (timeline.spots[job] !== undefined || !isReady(job)) continue;
      const latest = next === undefined ? Number.POSITIVE_INFINITY : next.spot.begin - 1;
      const spot = timeline.find(job, Math.max(clock, timeline.ready(job)), latest);
      if (spot !== undefined) next = { job, spot };
    }
    if (next === undefined) return undefined;
    timeline.put(next.job, next.spot);
    clock = next.spot.end;
  }
  return timeline.spots.flatMap((spot) => spot ?? []);
};
