import { commonNegatives } from '../../facts/supply-figures.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { aFew, someNames } from './supply-words.ts';

/** Negatives that meet at two points carry current where none should flow: through screens, bonding and the hull. */
export const noCommonNegative: Rule = {
  id: 'supply/no-common-negative',
  level: 'doubt',
  title: 'Nobody has said where the negatives of several banks meet.',
  sources: ['practice-cautions'],
  check: ({ index, plan }) => {
    const banks = plan.banks.map(({ bank }) => bank);
    const bare = index.boat.supply.dcdc.filter(({ isolated }) => !isolated).map(({ id }) => id);
    if (plan.negativeAt !== undefined || banks.length + bare.length < 2) return [];
    return [
      {
        about: aFew([...banks, ...bare]),
        says: `Nobody has said where the negatives of ${someNames([...banks, ...bare])} meet. With two such points, current of the one flows through screens and bonding of the other.`,
        limit: figurePart(commonNegatives),
        cure: 'Find the one bar that all negatives lead to and enter its place as negativeAt; part what is joined a second time, with the negative at the battery off.',
      },
    ];
  },
};
