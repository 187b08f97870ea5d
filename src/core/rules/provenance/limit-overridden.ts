import { isLimitId, limitOf } from '../../boat/limit-of.ts';
import { slippedOhm } from '../../network/slipped-ohm.ts';
import type { Observation, Rule } from '../rule.ts';

const unknown = (id: string): Observation => ({
  about: [],
  apart: [id],
  level: 'doubt',
  says: `The boat file sets a limit "${id}", which nothing here asks for, so it does nothing.`,
  cure: 'Mend its name, or take it out.',
});

/** A limit set by the owner holds, with the reason written down, and the next owner is told. */
export const limitOverridden: Rule = {
  id: 'provenance/limit-overridden',
  level: 'advice',
  title: 'A limit is set by the owner.',
  sources: ['project-provenance'],
  check: ({ index: { boat } }) =>
    Object.entries(boat.limits ?? {}).flatMap(([id, { value, reason }]) => {
      if (!isLimitId(id)) return [unknown(id)];
      // a figure no cable can have is a fault of its own: bus/resistance-out-of-range
      if (slippedOhm({ limitId: id, ohmPerM: value }) !== undefined) return [];
      const published = limitOf({}, id);
      return [
        {
          about: [],
          apart: [id],
          says: `The limit ${id} is ${value} ${published.unit} on this boat; else it would be ${published.value} ${published.unit}. Reason: ${reason}`,
          measured: { value, unit: published.unit },
          limit: published,
          cure: 'Keep it if the reason still holds; take it out of the boat file if not.',
        },
      ];
    }),
};
