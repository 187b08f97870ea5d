import type { Rule } from '../rule.ts';

/** Joints of a mast in weather or bilge are green in two seasons, and the last person to know is the one who needs the radio. */
export const mastPartedInTheWet: Rule = {
  id: 'ways/mast-parted-in-the-wet',
  level: 'fault',
  title: 'The cables of a mast can be parted nowhere dry.',
  sources: ['practice-mast'],
  check: ({ index, plan }) =>
    plan.masts
      .filter(({ breakAt }) => breakAt === undefined)
      .map(({ foot, lines }) => {
        const { name = foot } = index.places.get(foot) ?? {};
        return {
          about: [foot],
          says: `${lines.length === 1 ? 'One new cable goes' : `${lines.length} new cables go`} up the mast at ${name}, and no dry place within reach is at its foot, where they could be parted when the mast is taken down.`,
          cure: 'Enter a dry box within reach below deck beside the foot, with a way to it; on a keel-stepped mast at the sole or under the deck, never in the bilge.',
        };
      }),
};
