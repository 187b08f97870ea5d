import { compareCosts, costOfSpots } from './darkness.ts';
import { daySlots, type Ground } from './ground.ts';
import type { FoundOrder } from './improve.ts';
import { Timeline } from './timeline.ts';

/** The same order with every job as early as it goes at no more cost, so that of equal orders the one without idle hours is given. */
export const settle = (ground: Ground, { spots, cost }: FoundOrder): FoundOrder => {
  const timeline = new Timeline(ground);
  for (const [job, spot] of spots.entries()) timeline.put(job, spot);
  const inOrder = spots
    .map((spot, job) => ({ spot, job }))
    .sort((a, b) => a.spot.begin - b.spot.begin || a.job - b.job);
  let least = cost;
  for (const { job, spot } of inOrder) {
    timeline.lift(job);
    const ready = timeline.ready(job);
    let kept = spot;
    // What ends a way may go to an earlier day though not to the first: each is tried.
    for (let from = ready; from < spot.begin; ) {
      const sooner = timeline.find(job, from, spot.begin - 1);
      if (sooner === undefined) break;
      timeline.put(job, sooner);
      const now = costOfSpots(ground, timeline.spots);
      timeline.lift(job);
      if (compareCosts(now, least) <= 0) {
        least = now;
        kept = sooner;
        break;
      }
      if (ground.jobs[job]?.ends !== true) break;
      from = (Math.floor(sooner.begin / daySlots) + 1) * daySlots;
    }
    timeline.put(job, kept);
  }
  return { spots: timeline.spots.flatMap((spot) => spot ?? []), cost: least };
};
