import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { busName, limitPart, metres, warnCures } from '../rule-words.ts';

/** The limit holds for the two farthest plugs along the cable, drops included, not for the trunk alone. */
export const tooFarEndToEnd: Rule = {
  id: 'bus/too-far-end-to-end',
  level: 'fault',
  title: 'The two farthest points of a bus are too far apart along the cable.',
  sources: ['toshiba-devicenet'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) =>
    plan.buses.flatMap((bus) => {
      const warn = limitOf(index.boat, `nmea2000-trunk-${bus.grade}-warn`);
      const fail = limitOf(index.boat, `nmea2000-trunk-${bus.grade}-fail`);
      if (bus.farthestM <= warn.value) return [];
      const limit = bus.farthestM > fail.value ? fail : warn;
      return [
        {
          about: [bus.id],
          level: limit === fail ? ('fault' as const) : ('doubt' as const),
          says: `On ${busName(index, bus.id)} the farthest two points are ${metres(bus.farthestM)} apart along the cable, drops included; the limit for ${bus.grade.replace('-', ' ')} cable is ${metres(limit.value)}.`,
          measured: { value: bus.farthestM, unit: 'm' },
          limit: limitPart(limit),
          cure: 'Shorten the trunk or the drops at its ends, use heavier cable, or split the bus in two.',
          ...warnCures(bus),
        },
      ];
    }),
};
