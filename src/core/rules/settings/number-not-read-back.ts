import { masked } from '../../walk-round/masked.ts';
import type { Rule } from '../rule.ts';

/** The ship's number stands in the file, and nobody read it back. */
export const numberNotReadBack: Rule = {
  id: 'settings/number-not-read-back',
  level: 'doubt',
  title: 'The ship’s number was not read back by a second person.',
  sources: ['practice-papers-first'],
  looksAt: 'whole-plan',
  check: ({ index }) => {
    const number = index.boat.papers?.number;
    if (number === undefined || number.readBackBy !== undefined) return [];
    return [
      {
        about: [],
        says: `The ship’s number ${masked(number.digits)} was typed by one person and read back by none; most sets take it once.`,
        cure: 'Let a second person read the nine digits off the licence, one by one, and note who it was.',
      },
    ];
  },
};
