import { isAboard, lastPhase } from '../../boat/phase.ts';
import { compassLimits } from '../../facts/compass-figures.ts';
import { unreadNear } from '../../power/unread-near.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart, metres, unitName } from '../rule-words.ts';
import { magneticSites } from './heading-words.ts';

const { unknownItem } = compassLimits;

/** The standard keeps 5 m from a thing nobody has looked up, which few boats have: so each compass is told of all of them at once. */
export const unitsNotRead: Rule = {
  id: 'compass/units-not-read',
  level: 'advice',
  title: 'Units within 5 m of a compass have no safe distance on their sheets.',
  sources: ['iso-25862', 'choice-siting'],
  check: ({ index, plan }) => {
    const aboard = index.boat.kit.filter((unit) => isAboard(unit, lastPhase(index.boat)));
    const compasses = [
      ...plan.compass.map(({ compass }) => compass),
      ...magneticSites({ plan }).map(({ site }) => site.unit),
    ];
    return compasses.flatMap((id): Observation[] => {
      const compass = index.kit.get(id);
      const [nearest, ...others] = compass === undefined ? [] : unreadNear(index, compass, aboard);
      if (nearest === undefined) return [];
      const told = [nearest, ...others].map(
        ({ unit, distanceM }) => `${unitName(index, unit)} at ${metres(distanceM)}`,
      );
      const count =
        others.length === 0
          ? `One unit within ${unknownItem.value} m of ${unitName(index, id)} has no safe distance on its sheet`
          : `${told.length} units within ${unknownItem.value} m of ${unitName(index, id)} have no safe distance on their sheets`;
      return [
        {
          about: [id],
          says: `${count}: ${told.join(', ')}.`,
          measured: { value: nearest.distanceM, unit: 'm' },
          limit: figurePart(unknownItem),
          cure: `Read the distance on ${others.length === 0 ? 'its plate' : 'each plate, the nearest first,'} or in the manual and enter it. Until then watch the compass while ${others.length === 0 ? 'it is' : 'each is'} switched on and off, and swing it with everything on.`,
        },
      ];
    });
  },
};
