import { type MetNeed, metNeeds } from '../../readings/met-needs.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** The reference a heading is wanted in, where the messages say none and no variation helps. */
const unsaid = ({ ways, hasVariation }: MetNeed): string | undefined => {
  if (hasVariation || ways.some(({ signal }) => signal.reference !== undefined)) return undefined;
  return ways[0].wanted.references[0];
};

/**
 * A heading wanted as true or as magnetic, from a sensor whose messages may be either. With variation a screen makes one
 * from the other; without it the wrong one is off by the variation, and nothing shows it.
 */
export const referenceUnknown: Rule = {
  id: 'readings/reference-unknown',
  level: 'doubt',
  title: 'Nothing says whether a heading is true or magnetic.',
  sources: ['heading-reference'],
  looksAt: 'whole-plan',
  check: ({ index, reaches }) =>
    metNeeds(reaches, ({ reading }) => reading === 'heading').flatMap((met) => {
      const wanted = unsaid(met);
      if (wanted === undefined) return [];
      const { need, ways } = met;
      const [{ ports }] = ways;
      const [source = need.at] = ports;
      const screen = unitName(index, need.at);
      return [
        {
          about: [need.at, ...ports],
          apart: [wanted, ...(need.instance === undefined ? [] : [need.instance])],
          says: `${screen} wants heading as ${wanted}. ${unitName(index, source)} sends it, but nothing says whether as true or as magnetic, and no variation reaches ${screen} to make one from the other.`,
          cure: `Bring variation to ${screen}: many position antennas send it. Or look the sensor up: most give magnetic heading, a gyro or a satellite compass gives true.`,
        },
      ];
    }),
};
