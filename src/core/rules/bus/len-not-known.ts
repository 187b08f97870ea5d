import { portOf } from '../../boat/boat-index.ts';
import type { Rule } from '../rule.ts';
import { busName, unitName } from '../rule-words.ts';

/** A device whose load nobody entered counts as little or as a guess; the volts of the whole bus rest on it. */
export const lenNotKnown: Rule = {
  id: 'bus/len-not-known',
  level: 'doubt',
  title: 'The LEN of a device on the bus is not known.',
  sources: ['practice-bus-limits'],
  check: ({ index, plan }) =>
    plan.joins.flatMap((join) => {
      if (join.bus === undefined) return [];
      const unknown = join.members
        .map((member) => `${member.kit}.${member.port}`)
        .filter((port) => portOf(index, port)?.len === undefined);
      if (unknown.length === 0) return [];
      const names = unknown.slice(0, 3).map((port) => unitName(index, port));
      const more = unknown.length > 3 ? ` and ${unknown.length - 3} more` : '';
      return [
        {
          about: [join.bus],
          says: `The load (LEN) of ${unknown.length} of ${join.members.length} devices on ${busName(index, join.bus)} is not known: ${names.join(', ')}${more}. It is counted from their largest current, or as 1, so the volts are better than they may be.`,
          measured: { value: unknown.length, unit: 'devices' },
          cure: 'Read the LEN in each manual or on the unit, and enter it on the port of its sheet.',
        },
      ];
    }),
};
