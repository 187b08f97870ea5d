import { lengthMm } from '../../boat/measure.ts';
import type { LineEntry } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { metres } from '../rule-words.ts';

/** New cable planned through a way nobody has opened: it may be full, shut, or another length. Cable that lies there already proves the way. */
export const ledThroughUnseenWay: Rule = {
  id: 'ways/led-through-unseen-way',
  level: 'doubt',
  title: 'New cable is led through a way nobody has seen.',
  sources: ['practice-survey'],
  check: ({ index, plan }) => {
    const linesIn = new Map<string, LineEntry[]>();
    for (const line of plan.lines.filter(({ kept }) => kept === undefined)) {
      for (const way of new Set(line.ways)) linesIn.set(way, [...(linesIn.get(way) ?? []), line]);
    }
    return index.boat.ways.flatMap((way) => {
      const lines = linesIn.get(way.id) ?? [];
      if (way.known !== 'assumed' || lines.length === 0) return [];
      const [a, b] = way.ends.map((id) => index.places.get(id)?.name ?? id);
      const { nominalMm, longestMm } = lengthMm(way.length);
      const count = lines.length === 1 ? 'One new cable is' : `${lines.length} new cables are`;
      return [
        {
          about: [way.id],
          says: `${count} led from ${a} to ${b} by a way nobody has seen. It is entered as ${metres(nominalMm / 1000)} and could be ${metres(longestMm / 1000)}, or shut.`,
          cure: 'Open it, pull a messenger line through and tape it before the cable is ordered.',
        },
      ];
    });
  },
};
