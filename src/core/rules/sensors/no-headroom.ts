import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { badChecks, measuredPart } from './sensor-words.ts';

/** An insert that cannot be pulled is never cleaned, and not stopped with its plug either. */
export const noHeadroom: Rule = {
  id: 'sensors/no-headroom',
  level: 'doubt',
  title: 'There is no room over a housing to pull its insert.',
  sources: ['practice-transducer-place'],
  check: ({ index, plan }) =>
    badChecks({ plan }, 'headroom').map(({ site, check }) => ({
      about: [site.unit],
      says: `Over ${unitName(index, site.unit)} there are ${check.measured ?? 0} mm; ${check.limit ?? 0} mm are wanted to pull the insert and put in the plug.`,
      ...measuredPart(check),
      cure: 'Choose a place with more room, or make a hatch in what lies over it.',
    })),
};
