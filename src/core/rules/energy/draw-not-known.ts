import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** A sum that leaves a unit out looks better than the boat is. */
export const drawNotKnown: Rule = {
  id: 'energy/draw-not-known',
  level: 'doubt',
  title: 'Nobody says what a unit draws.',
  sources: ['practice-sheet-gaps'],
  check: ({ index, plan }) =>
    plan.unknownDraws
      .filter(({ after }) => after)
      .map(({ kit }) => ({
        about: [kit],
        says: `What ${unitName(index, kit)} draws is not known, so that it is in no sum of the day: the banks give more than the plan says.`,
        cure: 'Read the typical and the largest draw off its plate or in its manual and enter it on its sheet.',
      })),
};
