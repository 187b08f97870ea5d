import { limitOf } from '../../boat/limit-of.ts';
import type { Observation, Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';

/** Near a whip the field passes what the public may stand in, if the radio sends all the time. */
export const peopleNearAntenna: Rule = {
  id: 'antennas/people-near-antenna',
  level: 'advice',
  title: 'People stand near an antenna that sends.',
  sources: ['icnirp-1998', 'choice-people'],
  check: ({ index, plan }) =>
    plan.sites.flatMap(({ unit, aerial }) =>
      (aerial?.near ?? []).flatMap(({ place, distanceM }): Observation[] => {
        if (aerial?.sends === undefined) return [];
        const { powerW, peopleM, radio } = aerial.sends;
        return [
          {
            about: [unit, place],
            says: `Who stands at ${index.places.get(place)?.name ?? place} is ${metres(distanceM)} from ${unitName(index, unit)}; at the ${powerW} W of ${unitName(index, radio)} people keep ${metres(peopleM)} off.`,
            measured: { value: distanceM, unit: 'm' },
            limit: { value: peopleM, unit: 'm', source: limitOf(index.boat, 'radio-power-density').source },
            cure: 'Move the antenna up or away, or send at low power and briefly while somebody stands there.',
          },
        ];
      }),
    ),
};
