import { viewing } from '../../facts/opening-figures.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { aboutFit, comesHere, isSet, mmWords } from './fit-words.ts';

/** What must be read at a glance is seen under a least angle. */
export const hardToRead: Rule = {
  id: 'fitting/hard-to-read',
  level: 'doubt',
  title: 'Letters on a screen are too small for where it is read from.',
  sources: ['iho-s52', 'memory-iec-62288'],
  check: ({ index, plan }) =>
    plan.fits.flatMap((fit): Observation[] => {
      const { lettersMm, floorMm, hasMm } = fit.view ?? {};
      if (lettersMm === undefined || floorMm === undefined || hasMm === undefined) return [];
      if (hasMm >= lettersMm || !isSet(fit)) return [];
      const isUnread = hasMm < floorMm;
      const limit = isUnread ? floorMm : lettersMm;
      return [
        {
          about: aboutFit(fit),
          ...(isUnread ? {} : { level: 'advice' }),
          says: `The smallest letters of ${comesHere(index, fit)} are ${mmWords(hasMm)} high; from where it is read ${mmWords(limit)} ${isUnread ? 'is the least' : 'is easy to read'}.`,
          measured: { value: hasMm, unit: 'mm' },
          limit: { ...figurePart(isUnread ? viewing.lettersFloor : viewing.letters), value: limit, unit: 'mm' },
          cure: 'Bring it nearer to the eye, set its letters larger, or choose a larger screen.',
        },
      ];
    }),
};
