import type { Observation, Rule } from '../rule.ts';
import { aboutFit, comesHere, isSet } from './fit-words.ts';

/** A wet screen takes drops for fingers and gloves for nothing. */
export const touchWithWetHands: Rule = {
  id: 'fitting/touch-with-wet-hands',
  level: 'advice',
  title: 'A screen worked by touch only is where hands are wet or gloved.',
  sources: ['practice-wet-hands'],
  check: ({ index, plan }) =>
    plan.fits.filter(isSet).flatMap((fit): Observation[] => {
      if (index.sheetOf.get(fit.unit ?? '')?.face?.worked !== 'touch') return [];
      const viewed = index.boat.openings?.find(({ id }) => id === fit.opening)?.viewed;
      const exposure = index.places.get(fit.place)?.exposure;
      const isWet = exposure === 'weather' || exposure === 'spray';
      if (!isWet && viewed?.gloves !== true) return [];
      return [
        {
          about: aboutFit(fit),
          says: `${comesHere(index, fit)} is worked by touch only, where hands are ${viewed?.gloves === true ? 'gloved' : 'wet'}.`,
          cure: 'Choose one with keys, or give it a keypad; and learn where its screen is locked against drops.',
        },
      ];
    }),
};
