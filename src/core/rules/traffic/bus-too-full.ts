import { type LimitOnBoat, limitOf } from '../../boat/limit-of.ts';
import type { Level } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { busName, limitPart } from '../rule-words.ts';

/** A full bus is seldom the trouble itself; it shows a unit that repeats everything or a sensor left at twenty times its rate. */
export const busTooFull: Rule = {
  id: 'traffic/bus-too-full',
  level: 'fault',
  title: 'A bus is too full of messages.',
  sources: ['practice-bus-load'],
  check: ({ index, plan }) => {
    const steps: readonly { level: Level; limit: LimitOnBoat }[] = [
      { level: 'fault', limit: limitOf(index.boat, 'nmea2000-load-stop') },
      { level: 'doubt', limit: limitOf(index.boat, 'nmea2000-load-warn') },
      { level: 'advice', limit: limitOf(index.boat, 'nmea2000-load-note') },
    ];
    return plan.buses.flatMap((bus) => {
      const { worstPct, averagePct } = bus.traffic;
      const over = steps.find(({ limit }) => worstPct > limit.value);
      if (over === undefined) return [];
      return [
        {
          about: [bus.id],
          level: over.level,
          says: `${busName(index, bus.id)} is ${worstPct.toFixed(1)} % full at the worst, ${averagePct.toFixed(1)} % as a rule, by what its units send; the mark is ${over.limit.value} %.`,
          measured: { value: worstPct, unit: '%' },
          limit: limitPart(over.limit),
          cure: 'Look for a unit that repeats what others say, or a sensor set to send far more often than anybody needs.',
        },
      ];
    });
  },
};
