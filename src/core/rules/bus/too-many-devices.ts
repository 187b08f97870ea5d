import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { busName, limitPart } from '../rule-words.ts';

/** Beyond the count the last devices may never claim an address. */
export const tooManyDevices: Rule = {
  id: 'bus/too-many-devices',
  level: 'fault',
  title: 'Too many devices hang on one bus.',
  sources: ['practice-bus-limits'],
  check: ({ index, plan }) => {
    const limit = limitOf(index.boat, 'nmea2000-devices');
    return plan.buses
      .filter((bus) => bus.devices > limit.value)
      .map((bus) => ({
        about: [bus.id],
        says: `${bus.devices} devices hang on ${busName(index, bus.id)}; the limit is ${limit.value}. The last ones may never find an address.`,
        measured: { value: bus.devices, unit: 'devices' },
        limit: limitPart(limit),
        cure: 'Split the bus in two with a bridge between them.',
      }));
  },
};
