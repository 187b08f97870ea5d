import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { limitPart, metres, unitName } from '../rule-words.ts';

/** A network cable longer than the standard allows works on the bench and drops frames at sea. */
export const linkTooLong: Rule = {
  id: 'network/link-too-long',
  level: 'fault',
  title: 'A network cable is longer than it may be.',
  sources: ['memory-ethernet-length'],
  check: ({ index, plan }) => {
    const limit = limitOf(index.boat, 'ethernet-link');
    return plan.lines
      .filter(({ kind, longestM }) => kind === 'ethernet' && longestM > limit.value)
      .map(({ from, to, longestM, lengthM }) => ({
        about: [from, to].map((end) => end.split('.')[0] ?? end),
        says: `The network cable from ${unitName(index, from)} to ${unitName(index, to)} is ${metres(lengthM)} and could be ${metres(longestM)}; the limit is ${limit.value} m.`,
        measured: { value: longestM, unit: 'm' },
        limit: limitPart(limit),
        cure: 'Put a switch on the way, or lead it a shorter way.',
      }));
  },
};
