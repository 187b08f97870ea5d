import type { Rule } from '../rule.ts';

/** Somebody must be able to get at both terminators: the first dock test lifts them one after the other. */
export const endOutOfReach: Rule = {
  id: 'bus/end-out-of-reach',
  level: 'fault',
  title: 'The trunk ends where nobody can reach the terminator.',
  sources: ['practice-terminators'],
  check: ({ index, plan }) =>
    plan.buses.flatMap((bus) =>
      [...new Set(bus.ends)].flatMap((end) => {
        const place = index.places.get(end);
        if (place?.reach !== 'hard') return [];
        return [
          {
            about: [bus.id, place.id],
            says: `The trunk of ${index.buses.get(bus.id)?.name ?? bus.id} ends at ${place.name}, which is hard to reach, so its terminator can never be checked.`,
            cure: 'End the trunk at the nearest place that opens by hand or behind a panel.',
          },
        ];
      }),
    ),
};
