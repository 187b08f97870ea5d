import { numberHolds } from '../../fitting/settings/who-may-enter.ts';
import type { Rule } from '../rule.ts';

/** A number of a private registrar, and she calls at foreign ports. */
export const numberNotAbroad: Rule = {
  id: 'settings/number-not-abroad',
  level: 'fault',
  title: 'The ship’s number does not hold abroad.',
  sources: ['uscg-mmsi'],
  looksAt: 'whole-plan',
  check: ({ index }) => {
    const { number, goesAbroad = false } = index.boat.papers ?? {};
    if (number === undefined || numberHolds({ from: number.from, goesAbroad })) return [];
    return [
      {
        about: [],
        says: 'She calls at foreign ports with a number of a private registrar: it stands in no register that is searched there, and does not hold there.',
        cure: 'Ask the state for a ship station licence and a new number before anything is typed in.',
      },
    ];
  },
};
