import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { limitPart, metres, unitName } from '../rule-words.ts';

/** Over the limit a drop sends echoes back into the trunk, and its device comes and goes. */
export const dropTooLong: Rule = {
  id: 'bus/drop-too-long',
  level: 'fault',
  title: 'A drop from its tee to the device is too long.',
  sources: ['toshiba-devicenet'],
  check: ({ index, plan }) => {
    const limit = limitOf(index.boat, 'nmea2000-one-drop');
    return plan.buses.flatMap((bus) =>
      bus.drops
        .filter((drop) => drop.boughtM > limit.value)
        .map((drop) => ({
          about: [bus.id, drop.port],
          says: `The drop to ${unitName(index, drop.port)} is ${metres(drop.boughtM)} as bought; the limit for one drop is ${metres(limit.value)}.`,
          measured: { value: drop.boughtM, unit: 'm' },
          limit: limitPart(limit),
          cure: `Bring the trunk nearer, or shorten the drop by ${metres(drop.boughtM - limit.value)}.`,
        })),
    );
  },
};
