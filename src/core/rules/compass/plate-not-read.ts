import { compassLimits } from '../../facts/compass-figures.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart, metres, unitName } from '../rule-words.ts';

/** A new unit near a compass, of which nobody has looked up how far it must keep: one advice for each compass. */
export const plateNotRead: Rule = {
  id: 'compass/plate-not-read',
  level: 'doubt',
  title: 'A new unit near a compass has no safe distance on its sheet.',
  sources: ['iso-25862', 'choice-siting'],
  check: ({ index, plan }) =>
    plan.compass.flatMap((entry): Observation[] => {
      const unread = entry.units.filter(
        ({ unit, safeBy, tooNear }) =>
          (safeBy === 'taken' || (safeBy === 'kind' && tooNear)) && index.kit.get(unit)?.fate === 'comes',
      );
      if (unread.length === 0) return [];
      const told = unread.map(({ unit, distanceM }) => `${unitName(index, unit)} at ${metres(distanceM)}`);
      return [
        {
          about: [entry.compass, ...unread.map(({ unit }) => unit)],
          apart: [entry.compass],
          says: `Near ${unitName(index, entry.compass)} come units whose safe distance is not known: ${told.join(', ')}.`,
          measured: { value: Math.min(...unread.map(({ distanceM }) => distanceM)), unit: 'm' },
          limit: figurePart(compassLimits.unknownItemWarnBelow),
          cure: `Read the distance on the plate or in the manual and enter it. Without one keep ${compassLimits.unknownItemWarnBelow.value} m off, and swing the compass afterwards.`,
        },
      ];
    }),
};
