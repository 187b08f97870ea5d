import { slippedOhm } from '../../network/slipped-ohm.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';

/** Handbooks have printed figures ten times too small; every volt of the bus is worked out from this one. */
export const resistanceOutOfRange: Rule = {
  id: 'bus/resistance-out-of-range',
  level: 'fault',
  title: 'A cable resistance set by the owner is none that such a cable can have.',
  sources: ['choice-resistance-range'],
  check: ({ index: { boat } }) =>
    Object.entries(boat.limits ?? {}).flatMap(([limitId, { value }]) => {
      const range = slippedOhm({ limitId, ohmPerM: value });
      if (range === undefined) return [];
      const { name, usual, least, most } = range;
      const nearest = value < least.value ? least : most;
      return [
        {
          about: [],
          apart: [limitId],
          says: `The power wires of ${name} cable are set to ${value} ohm per metre on this boat. Wire of this gauge has ${least.value} to ${most.value}, so a decimal has slipped, and the volts of the bus come out wrong by as much.`,
          measured: { value, unit: usual.unit },
          limit: figurePart(nearest),
          cure: `Read the cable’s own data sheet again, one conductor at 20 °C; without one take the limit out of the boat file, and ${usual.value} holds.`,
        },
      ];
    }),
};
