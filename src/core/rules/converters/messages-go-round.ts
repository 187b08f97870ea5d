import { readingWords } from '../../facts/reading-words.ts';
import { hopsOf } from '../../joins/hops.ts';
import type { Rule } from '../rule.ts';
import { busName, unitName } from '../rule-words.ts';

/** Two units that carry one reading out of a bus and back into it: it goes round for ever, older each time. */
export const messagesGoRound: Rule = {
  id: 'converters/messages-go-round',
  level: 'fault',
  title: 'Two converters carry a reading out of a bus and back into it.',
  sources: ['messages-conflicts'],
  check: ({ index, plan }) => {
    const hops = hopsOf(index, plan.joins);
    const out = hops.filter(({ from }) => index.buses.has(from));
    return out.flatMap((away) =>
      hops
        .filter(({ kit, from, to }) => kit !== away.kit && from === away.to && to === away.from)
        .flatMap((back) => {
          const round = [...away.carries].filter((reading) => back.carries.has(reading));
          if (round.length === 0) return [];
          return [
            {
              about: [away.from, away.kit, back.kit],
              says: `${unitName(index, away.kit)} carries ${round.map((reading) => readingWords[reading]).join(', ')} out of ${busName(index, away.from)}, and ${unitName(index, back.kit)} carries it back in. It goes round for ever, and everybody hears it twice.`,
              cure: 'Leave one path in each direction: switch these readings off in one of the two.',
            },
          ];
        }),
    );
  },
};
