import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { busName, limitPart, metres } from '../rule-words.ts';

/** Every drop adds a little echo; together they make the whole bus unreliable though each one passes. */
export const dropsTooLongTogether: Rule = {
  id: 'bus/drops-too-long-together',
  level: 'fault',
  title: 'All drops of a bus together are too long.',
  sources: ['toshiba-devicenet'],
  check: ({ index, plan }) => {
    const limit = limitOf(index.boat, 'nmea2000-all-drops');
    return plan.buses
      .filter((bus) => bus.dropsM > limit.value)
      .map((bus) => ({
        about: [bus.id],
        says: `The drops of ${busName(index, bus.id)} add up to ${metres(bus.dropsM)} as bought; the limit is ${metres(limit.value)} together.`,
        measured: { value: bus.dropsM, unit: 'm' },
        limit: limitPart(limit),
        cure: 'Lead the trunk past the units with the longest drops, or split the bus in two.',
      }));
  },
};
