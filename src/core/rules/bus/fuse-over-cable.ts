import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { busName, limitPart } from '../rule-words.ts';

/** The breaker protects the cable: it must open before the thinnest wire behind it is hurt. */
export const fuseOverCable: Rule = {
  id: 'bus/fuse-over-cable',
  level: 'fault',
  title: 'The fuse of a bus lets more through than its cable carries.',
  sources: ['practice-bus-feed', 'practice-cable-grades'],
  check: ({ index, plan }) => {
    const circuits = index.boat.supply.panels.flatMap((panel) => panel.circuits);
    return plan.buses.flatMap((bus) => {
      const limit = limitOf(index.boat, `nmea2000-current-${bus.grade}`);
      return circuits
        .filter((circuit) => circuit.feeds.includes(bus.id) && circuit.ratingA > limit.value)
        .map((circuit) => ({
          about: [bus.id, circuit.id],
          says: `${busName(index, bus.id)} is fed through ${circuit.ratingA} A; its ${bus.grade.replace('-', ' ')} cable and plugs carry ${limit.value} A.`,
          measured: { value: circuit.ratingA, unit: 'A' },
          limit: limitPart(limit),
          cure: `Fit ${limit.value} A, or heavier cable throughout.`,
        }));
    });
  },
};
