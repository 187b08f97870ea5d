import { limitOf } from '../../boat/limit-of.ts';
import type { Rule } from '../rule.ts';
import { limitPart, unitName } from '../rule-words.ts';

/** Every listener takes a little of the talker's strength; with too many the last one drops out. */
export const tooManyListeners: Rule = {
  id: 'wiring/too-many-listeners',
  level: 'doubt',
  title: 'One 0183 output feeds more listeners than it may bear.',
  sources: ['choice-fan-out'],
  check: ({ index, plan }) => {
    const limit = limitOf(index.boat, 'nmea0183-listeners');
    const listeners = new Map<string, Set<string>>();
    for (const join of plan.joins.filter(({ kind }) => kind === 'nmea0183')) {
      const heard = join.members.filter(({ as }) => as === 'listen').map(({ kit, port }) => `${kit}.${port}`);
      for (const { kit, port } of join.members.filter(({ as }) => as === 'talk')) {
        const talker = `${kit}.${port}`;
        listeners.set(talker, new Set([...(listeners.get(talker) ?? []), ...heard]));
      }
    }
    return [...listeners]
      .filter(([, heard]) => heard.size > limit.value)
      .map(([talker, heard]) => ({
        about: [talker],
        says: `${unitName(index, talker)} feeds ${heard.size} listeners from one output; where its manual is silent, ${limit.value} is what one bears. The last of them may drop out.`,
        measured: { value: heard.size, unit: 'listeners' },
        limit: limitPart(limit),
        cure: 'Put a buffer or a multiplexer between, or look the number up in its manual and set the limit with that page as the reason.',
      }));
  },
};
