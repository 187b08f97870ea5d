import type { Rule } from '../rule.ts';

/** No arrangement of trunk, tees and feed was found that keeps every limit; the plan has no lines for this bus. */
export const noLayoutFound: Rule = {
  id: 'bus/no-layout-found',
  level: 'fault',
  title: 'No layout was found for a bus.',
  sources: ['project-layout'],
  check: ({ index, plan }) => {
    const laid = new Set(plan.buses.map((bus) => bus.id));
    const joined = new Set(plan.joins.flatMap((join) => (join.bus === undefined ? [] : [join.bus])));
    return index.boat.buses
      .filter((bus) => joined.has(bus.id) && !laid.has(bus.id))
      .map((bus) => ({
        about: [bus.id],
        says: `No layout was found for ${bus.name} that keeps every limit: trunk, drops, reach and volts. The plan has no lines for it.`,
        cure: 'Check that every unit of the bus can be reached over ways, allow tees at a dry place near the far ones, or split the bus in two.',
      }));
  },
};
