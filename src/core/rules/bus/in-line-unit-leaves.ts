import type { Rule } from '../rule.ts';
import { busName } from '../rule-words.ts';

/** A unit with two bus ports used in line is a piece of trunk; when it goes the bus is cut in two. */
export const inLineUnitLeaves: Rule = {
  id: 'bus/in-line-unit-leaves',
  level: 'fault',
  title: 'A unit that the bus runs through is to leave.',
  sources: ['practice-bus-limits'],
  check: ({ index }) =>
    index.boat.joins.flatMap((join) => {
      const { bus } = join;
      if (bus === undefined || join.hold === 'never') return [];
      return index.boat.kit.flatMap((unit) => {
        const inLine = index.sheetOf.get(unit.id)?.inLine;
        const joined = join.members.filter(({ kit }) => kit === unit.id).map(({ port }) => port);
        if (unit.fate !== 'goes' || inLine === undefined || !inLine.every((port) => joined.includes(port))) return [];
        return [
          {
            about: [bus, unit.id],
            says: `${busName(index, bus)} runs through ${unit.name}, which goes${unit.phase === undefined ? '' : ` in phase ${unit.phase}`}. When it is taken out the bus is cut in two, and neither half has two terminators.`,
            cure: 'Put a tee or a piece of trunk in its place the same day, and buy it beforehand.',
          },
        ];
      });
    }),
};
