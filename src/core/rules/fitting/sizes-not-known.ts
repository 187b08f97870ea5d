import type { Observation, Rule } from '../rule.ts';
import { aboutFit, comesHere, openingName } from './fit-words.ts';

/** Without sizes nothing can be said of a hole. */
export const sizesNotKnown: Rule = {
  id: 'fitting/sizes-not-known',
  level: 'advice',
  title: 'Nobody has said how large a unit is that comes into an opening.',
  sources: ['practice-display-envelope'],
  check: ({ index, plan }) =>
    plan.fits
      .filter(({ verdict }) => verdict === 'not-known')
      .map(
        (fit): Observation => ({
          about: aboutFit(fit),
          says: `The sheet of ${comesHere(index, fit)} gives no body or no cut-out, so nothing can be said of ${openingName(index, fit.opening)}.`,
          cure: 'Enter both on its sheet from the drawing in its manual.',
        }),
      ),
};
