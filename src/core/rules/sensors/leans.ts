import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { limitPart, unitName } from '../rule-words.ts';
import { badChecks, measuredPart } from './sensor-words.ts';

/** A beam that leaves the hull at a slant comes back from somewhere else, or not at all. */
export const leans: Rule = {
  id: 'sensors/leans',
  level: 'doubt',
  title: 'A transducer leans more than it may, and nothing takes that up.',
  sources: ['choice-siting', 'practice-transducer-place'],
  check: ({ index, plan }) => {
    const limit = limitOf(index.boat, 'transducer-tilt');
    return badChecks({ plan }, 'tilt').map(({ site, check }) => ({
      about: [site.unit],
      says: `${unitName(index, site.unit)} leans ${check.measured ?? 0}° where the hull rises; up to ${limit.value}° is right without a block.`,
      ...measuredPart(check),
      limit: limitPart(limit),
      cure: 'Fit a fairing block cut to the hull, or a housing whose element leans the other way, and bed both.',
    }));
  },
};
