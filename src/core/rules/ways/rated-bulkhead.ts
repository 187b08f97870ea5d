import type { Way } from '../../boat/boat-schema.ts';
import type { Rule } from '../rule.ts';

const isRated = ({ through }: Way): boolean => through === 'watertight' || through === 'fire';

/** A hole through a bulkhead that holds water or fire back is as good as the transit in it: a sealed cable is no transit. */
export const ratedBulkhead: Rule = {
  id: 'ways/rated-bulkhead',
  level: 'advice',
  title: 'New cables go through a bulkhead that must stay tight against water or fire.',
  sources: ['choice-rated-transit'],
  check: ({ index, plan }) => {
    const used = new Map<string, number>();
    for (const { kept, ways } of plan.lines) {
      if (kept === undefined) for (const way of ways) used.set(way, (used.get(way) ?? 0) + 1);
    }
    const crossed = index.boat.ways.filter((way) => isRated(way) && used.has(way.id));
    if (crossed.length === 0) return [];
    const told = crossed.map(({ id, ends, through }) => {
      const words = ends.map((end) => index.places.get(end)?.name ?? end).join(' to ');
      return `${words} (${through === 'fire' ? 'fire' : 'watertight'}, ${used.get(id)} new)`;
    });
    return [
      {
        about: crossed.map(({ id }) => id),
        says: `New cables pass ${crossed.length === 1 ? 'a bulkhead' : `${crossed.length} bulkheads`} that must stay tight: ${told.join('; ')}.`,
        cure: 'Fit a transit rated for that bulkhead, one opening a cable, and close every opening left over; no foam, no tape. Ask whoever certifies the boat before you drill.',
      },
    ];
  },
};
