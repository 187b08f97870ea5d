import { readingName } from '../../facts/reading-words.ts';
import type { SeenEntry } from '../../plan-shape.ts';
import { isScreen } from '../../readings/before-and-after.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const keyOf = ({ reading, instance }: SeenEntry): string => `${reading} ${instance ?? ''}`;

/** A reading that somebody could read before is on no screen afterwards, and nobody has asked for it: perhaps forgotten. */
export const lostWithTheRefit: Rule = {
  id: 'readings/lost-with-the-refit',
  level: 'doubt',
  title: 'A reading that was on a screen before is on none afterwards.',
  sources: ['choice-before-and-after'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const { needs } = index.boat;
    const isAsked = (entry: SeenEntry): boolean =>
      needs.some(
        (need) =>
          need.reading === entry.reading &&
          (need.instance === undefined || entry.instance === undefined || need.instance === entry.instance),
      );
    const groups = new Map<string, SeenEntry[]>();
    for (const entry of plan.before) {
      if (entry.after || !isScreen(index, entry.at) || isAsked(entry)) continue;
      groups.set(keyOf(entry), [...(groups.get(keyOf(entry)) ?? []), entry]);
    }
    return [...groups.values()].flatMap((entries) => {
      const [first] = entries;
      if (first === undefined) return [];
      const screens = entries.map(({ at }) => unitName(index, at));
      return [
        {
          about: entries.map(({ at }) => at),
          apart: [first.reading, ...(first.instance === undefined ? [] : [first.instance])],
          says: `${readingName(first)} was shown before on ${screens.join(' and ')}, and no screen shows it after the refit.`,
          cure: 'Say at which screen it is still needed, or accept that it goes.',
        },
      ];
    });
  },
};
