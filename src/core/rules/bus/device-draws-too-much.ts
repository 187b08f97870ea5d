import { portOf } from '../../boat/boat-index.ts';
import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { limitPart, unitName } from '../rule-words.ts';

/** One unit may take one ampere from the bus; what wants more has a feed of its own. */
export const deviceDrawsTooMuch: Rule = {
  id: 'bus/device-draws-too-much',
  level: 'fault',
  title: 'A device draws more from the bus than one device may.',
  sources: ['practice-bus-limits'],
  check: ({ index, plan }) => {
    const limit = limitOf(index.boat, 'nmea2000-device-len');
    return plan.joins
      .filter((join) => join.bus !== undefined)
      .flatMap((join) => join.members.map((member) => `${member.kit}.${member.port}`))
      .flatMap((port) => {
        const len = portOf(index, port)?.len ?? 0;
        if (len <= limit.value) return [];
        return [
          {
            about: [port],
            says: `${unitName(index, port)} draws LEN ${len} from the bus; the limit for one device is LEN ${limit.value}.`,
            measured: { value: len, unit: 'LEN' },
            limit: limitPart(limit),
            cure: 'Give it a feed of its own from a panel, if its maker allows, and take its power off the bus.',
          },
        ];
      });
  },
};
