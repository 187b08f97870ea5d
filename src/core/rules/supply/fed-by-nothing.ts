import type { Rule } from '../rule.ts';
import { aFew, someNames } from './supply-words.ts';

/** A converter without an input, or one that feeds itself, gives nothing. */
export const fedByNothing: Rule = {
  id: 'supply/fed-by-nothing',
  level: 'fault',
  title: 'A panel hangs on no battery in the end.',
  sources: ['practice-separate-feeds'],
  check: ({ plan }) =>
    plan.converters.flatMap(({ converter, serves, circuit }) => {
      const dead = plan.panels.filter(({ panel, banks }) => serves.includes(panel) && banks.length === 0);
      if (dead.length === 0) return [];
      const panels = dead.map(({ panel }) => panel);
      return [
        {
          about: [converter, ...aFew(panels)],
          says:
            circuit === undefined
              ? `No circuit feeds the converter ${converter}, on which ${someNames(panels)} ${panels.length === 1 ? 'hangs' : 'hang'}.`
              : `The converter ${converter} feeds itself in a ring through ${someNames(panels)}; no battery stands behind it.`,
          cure: 'Name the circuit of a panel on a battery that feeds it.',
        },
      ];
    }),
};
