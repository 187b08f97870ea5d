import { splitDotted } from '../../boat/ids.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

import { amps } from './feed-words.ts';

/** A unit no circuit, bus, network cable or other unit feeds is dead on the day; its wire, fuse and share of the day are missing too. */
export const nothingFeedsIt: Rule = {
  id: 'power/nothing-feeds-it',
  level: 'doubt',
  title: 'Nothing feeds a unit that comes.',
  sources: ['practice-loads'],
  check: ({ index, plan }) =>
    plan.loads.flatMap(({ port, source, mostA }) => {
      // What stays works today, so its feed is only not written down.
      if (source.by !== 'nothing' || mostA === 0 || index.kit.get(splitDotted(port).kit)?.fate !== 'comes') return [];
      return [
        {
          about: [port],
          says: `Nothing feeds ${unitName(index, port)}, which draws up to ${amps(mostA)}: it is in no circuit, on no bus and on no cable that brings power.`,
          cure: 'Name it in the circuit that is to feed it, or give it a circuit of its own.',
        },
      ];
    }),
};
