import type { Rule } from '../rule.ts';
import { fedName, volts } from './feed-words.ts';

/** Units that hold their power draw more the fewer volts they get. Past a point no volts satisfy them: they switch off and on. */
export const cannotWork: Rule = {
  id: 'power/cannot-work',
  level: 'fault',
  title: 'A bank or converter cannot feed what hangs on it.',
  sources: ['choice-conductor-basis'],
  check: ({ index, plan }) =>
    plan.supplies.flatMap(({ source, sourceV, works, worst }) => {
      if (works) return [];
      const where = worst === undefined ? '' : `; it fails first at ${fedName(index, worst)}`;
      return [
        {
          about: [source, ...(worst === undefined ? [] : [worst])],
          says: `With everything drawing, ${source} at ${volts(sourceV)} cannot feed what hangs on it: there are no volts at which all get what they draw${where}.`,
          measured: { value: sourceV, unit: 'V' },
          cure: 'Lay a much thicker feeder or feed, or take the largest loads to another bank.',
        },
      ];
    }),
};
