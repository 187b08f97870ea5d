import type { Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';
import { badChecks, measuredPart } from './sensor-words.ts';

/** What stands beside a wind head and higher throws its eddies on it. */
export const windNotClear: Rule = {
  id: 'sensors/wind-not-clear',
  level: 'advice',
  title: 'Something stands close to a wind head and as high.',
  sources: ['choice-sensor-siting'],
  check: ({ index, plan }) =>
    badChecks({ plan }, 'clear-air').map(({ site, check }) => ({
      about: [site.unit, ...(check.by === undefined ? [] : [check.by])],
      says: `${unitName(index, check.by ?? '')} stands ${metres(check.measured ?? 0)} beside ${unitName(index, site.unit)} and as high or higher.`,
      ...measuredPart(check, 'choice-sensor-siting'),
      cure: 'Put the wind head on the longer arm, ahead and above, or lower the other.',
    })),
};
