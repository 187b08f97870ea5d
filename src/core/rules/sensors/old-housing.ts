import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { badChecks } from './sensor-words.ts';

/** A hole of the same size is not a housing of the same make. */
export const oldHousing: Rule = {
  id: 'sensors/old-housing',
  level: 'doubt',
  title: 'A new insert is meant for the old housing.',
  sources: ['practice-transducer-place'],
  check: ({ index, plan }) =>
    badChecks({ plan }, 'housing').map(({ site }) => ({
      about: [site.unit],
      says: `${unitName(index, site.unit)} is to go into the housing that is there. Inserts and housings fit each other within one make and one age, seldom beyond; that it does not fit shows when the boat is ashore and the old insert is out.`,
      cure: 'Find both part numbers in the makers’ lists before ordering, or plan the new housing with it: the hole is there, the work is ashore.',
    })),
};
