import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Cure } from '../../cure-shape.ts';
import { commonNegatives } from '../../facts/supply-figures.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { aFew, someNames } from './supply-words.ts';

const mostOffered = 4;

/** Where the bar of the negatives most often is: at a battery or behind a panel. */
const meetingCures = ({ boat: { supply }, places }: BoatIndex): Cure[] => {
  const likely = [...new Set([...supply.banks, ...supply.panels].map(({ place }) => place))];
  return likely.slice(0, mostOffered).map((place) => ({
    says: `They meet at ${places.get(place)?.name ?? place}, as seen aboard.`,
    edits: [{ edit: 'set-negative', params: { place } }],
  }));
};

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
        cure: 'Find the one bar that all negatives lead to and say where it is; part what is joined a second time, with the negative at the battery off.',
        cures: meetingCures(index),
      },
    ];
  },
};
