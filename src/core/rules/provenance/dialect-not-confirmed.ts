import { portOf } from '../../boat/boat-index.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Two generations of one maker's language may need a paid update or may never speak; somebody must look it up. */
export const dialectNotConfirmed: Rule = {
  id: 'provenance/dialect-not-confirmed',
  level: 'doubt',
  title: 'Two generations of one maker’s language are joined and nobody has confirmed that they speak.',
  sources: ['project-readings'],
  check: ({ index, plan }) =>
    plan.joins.flatMap((join) => {
      if (index.joins.get(join.id)?.confirmed !== undefined) return [];
      const spoken = join.members.flatMap(({ kit, port }) => {
        const dialect = portOf(index, `${kit}.${port}`)?.dialect;
        if (dialect === undefined) return [];
        const [maker = '', generation = ''] = dialect.split('/');
        return [{ kit, maker, generation }];
      });
      const makers = new Set(spoken.map(({ maker }) => maker));
      const generations = new Set(spoken.map(({ generation }) => generation));
      const isSure = generations.size < 2 && !generations.has('unknown');
      if (makers.size !== 1 || spoken.length < 2 || isSure) return [];
      return [
        {
          about: [join.id, ...spoken.map(({ kit }) => kit)],
          says: `${spoken.map(({ kit }) => unitName(index, kit)).join(' and ')} speak one maker’s language, but not surely the same generation of it. They may need an update, or not work together at all.`,
          cure: 'Look up in both manuals, or ask the maker, whether these two work together, and enter who said so on the join.',
        },
      ];
    }),
};
