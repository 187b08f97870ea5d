import { type LayoutLimit, layoutLimitWords } from '../../facts/layout-limits.ts';
import type { Rule } from '../rule.ts';

/** The limits that clash, as a sentence with a space after it; empty where none is known. */
const clashWords = (clash: readonly LayoutLimit[]): string => {
  const words = clash.map((limit) => layoutLimitWords[limit]);
  if (words.length === 0) return '';
  if (words.length === 1) return `In the way is ${words[0]}. `;
  return `These cannot all be kept: ${words.slice(0, -1).join(', ')} and ${words.at(-1)}. `;
};

/** No arrangement of trunk, tees and feed was found that keeps every limit; the plan has no lines for this bus. */
export const noLayoutFound: Rule = {
  id: 'bus/no-layout-found',
  level: 'fault',
  title: 'No layout was found for a bus.',
  sources: ['project-layout'],
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
      const mend = plan.buses.find(({ id }) => id === bus.id)?.mend;
      const [first] = mend?.cures ?? [];
      return [
        {
          about: [bus.id],
          says: `No layout was found for ${bus.name} that keeps every limit. ${clashWords(mend?.clash ?? [])}${nearest}`,
          ...(mend === undefined || first === undefined ? {} : { cures: mend.cures }),
          cure:
            first?.says ??
            'Check that every unit of the bus can be reached over ways, allow tees at a dry place near the far ones, or split the bus in two.',
        },
      ];
    });
  },
};
