import { panelNominalV } from '../../backbone/panel-volts.ts';
import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { busName, limitPart } from '../rule-words.ts';

/** A bus hung on a 24 V panel takes every unit on it at once; the breaker does not open, for nothing draws too much. */
export const voltsTooHigh: Rule = {
  id: 'bus/volts-too-high',
  level: 'fault',
  title: 'A bus is fed with more volts than its units stand.',
  sources: ['practice-bus-limits'],
  check: ({ index }) => {
    const limit = limitOf(index.boat, 'nmea2000-device-volts-most');
    return index.boat.supply.panels.flatMap((panel) => {
      const nominalV = panelNominalV(index, panel);
      if (nominalV <= limit.value) return [];
      return panel.circuits.flatMap((circuit) =>
        circuit.feeds
          .filter((fed) => index.buses.has(fed))
          .map((bus) => ({
            about: [bus, circuit.id],
            says: `${busName(index, bus)} is fed from ${nominalV} V; a unit on a bus need stand no more than ${limit.value} V, and all of them may be destroyed at once.`,
            measured: { value: nominalV, unit: 'V' },
            limit: limitPart(limit),
            cure: 'Feed it through a DC converter to 12 or 13.8 V of its own, or from a 12 V bank.',
          })),
      );
    });
  },
};
