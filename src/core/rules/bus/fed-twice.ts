import type { Rule } from '../rule.ts';
import { busName } from '../rule-words.ts';

/** Two feeds on one bus join their banks through a data cable, and no breaker alone switches it off. */
export const fedTwice: Rule = {
  id: 'bus/fed-twice',
  level: 'fault',
  title: 'Two circuits feed one bus.',
  sources: ['practice-bus-feed', 'rockwell-devicenet'],
  check: ({ index }) => {
    const circuits = index.boat.supply.panels.flatMap((panel) => panel.circuits);
    return index.boat.buses.flatMap((bus) => {
      const feeding = circuits.filter((circuit) => circuit.feeds.includes(bus.id)).map(({ id }) => id);
      if (feeding.length < 2) return [];
      return [
        {
          about: [bus.id, ...feeding],
          says: `${busName(index, bus.id)} is fed by ${feeding.length} circuits, ${feeding.join(' and ')}. With one switched off it is still live, and two banks may be joined through its thin cable.`,
          measured: { value: feeding.length, unit: 'feeds' },
          cure: 'Keep one feed; where one is not enough, cut the positive of the trunk between the two and make it two buses in the boat file.',
        },
      ];
    });
  },
};
