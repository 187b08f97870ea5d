import type { Rule } from '../rule.ts';

/** No arrangement of trunk, tees and feed was found that keeps every limit; the plan has no lines for this bus. */
export const noLayoutFound: Rule = {
  id: 'bus/no-layout-found',
  level: 'fault',
  title: 'No layout was found for a bus.',
  sources: ['project-layout'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const laid = new Map(plan.buses.map((bus) => [bus.id, bus.layout]));
    const joined = new Set(plan.joins.flatMap((join) => (join.bus === undefined ? [] : [join.bus])));
    return index.boat.buses.flatMap((bus) => {
      const layout = laid.get(bus.id);
      if (!joined.has(bus.id) || (layout !== undefined && layout.status !== 'infeasible')) return [];
      const nearest =
        layout === undefined
          ? 'Not even a trunk could be laid.'
          : `The nearest one breaks this: ${layout.broken.join(' ')}`;
      const entry = plan.buses.find(({ id }) => id === bus.id) ?? plan.unlaid?.find(({ id }) => id === bus.id);
      const mend = entry?.mend;
      const [first] = mend?.cures ?? [];
      const why = mend === undefined || mend.says === '' ? nearest : mend.says;
      return [
        {
          about: [bus.id],
          says: `No layout was found for ${bus.name} that keeps every limit. ${why}`,
          ...(mend === undefined || first === undefined ? {} : { cures: mend.cures }),
          cure:
            first?.says ??
            (mend === undefined
              ? 'Check that every unit of the bus can be reached over ways, allow tees at a dry place near the far ones, or split the bus in two.'
              : 'None of the single changes that were tried cures it. Check that ways lead to every unit of the bus, take units off it, or make two changes together.'),
        },
      ];
    });
  },
};
