import type { Observation, Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';
import { aboutFit, comesHere, isSet } from './fit-words.ts';

/** A face in a panel must stand the water that comes to its place. */
export const ipTooLow: Rule = {
  id: 'fitting/ip-too-low',
  level: 'fault',
  title: 'A face is not tight enough for the place it is in.',
  sources: ['iec-60529', 'practice-ip-at-helm'],
  check: ({ index, plan }) =>
    plan.fits.flatMap((fit): Observation[] => {
      const { water } = fit;
      if (water === undefined || water.enough === true || !isSet(fit)) return [];
      // what hangs there already has shown what it stands
      if (water.has === undefined && index.kit.get(fit.unit ?? '')?.fate !== 'comes') return [];
      const place = index.places.get(fit.place)?.name ?? fit.place;
      const need = water.need.join(' and ');
      return [
        {
          about: aboutFit(fit),
          ...(water.has === undefined ? { level: 'doubt' } : {}),
          says: `${comesHere(index, fit)} is ${water.has ?? 'of no IP code that is known'}; at ${place} it should be ${need}.`,
          limit: { value: water.need.length, unit: `marks: ${need}`, source: sourceWords('practice-ip-at-helm') },
          cure:
            water.has === undefined
              ? 'Look its IP code up in its manual before it is ordered.'
              : 'Choose one made for such a place, or find it a dry one. Codes above 6 do not stand for those below: IPX7 alone is no IPX6.',
        },
      ];
    }),
};
