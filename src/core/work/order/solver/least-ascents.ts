import type { Ground } from './ground.ts';
import { boxesFor } from './least-days.ts';

/** Days with work up a standing mast that no order does without: by how much of it can be done on no other day. */
export const leastAscents = ({ jobs, isMastUp, hands, perDay }: Ground): number => {
  const sizes = jobs.flatMap(({ aloft, window, slots, days, handSets }) => {
    const isBelow = window.to.some((to, day) => isMastUp[day] === 0 && to > 0);
    if (!aloft || isBelow) return [];
    const pieces = days > 0 ? Array.from({ length: days }, () => perDay) : [slots];
    return Array.from({ length: handSets[0]?.length ?? 0 }, () => pieces).flat();
  });
  return Math.ceil(boxesFor(sizes, perDay) / Math.max(1, hands));
};
