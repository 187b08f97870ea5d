import { portOf } from '../../boat/boat-index.ts';
import { limitOf } from '../../boat/limit-of.ts';
import { lineLoad } from '../../joins/line-load.ts';
import { baudOf, inputsOfTalker, lineTalks, talkedCharsPerS } from '../../traffic/line-talks.ts';
import type { Rule } from '../rule.ts';
import { limitPart, unitName } from '../rule-words.ts';

/** A multiplexer's output carries the sum of its inputs; what does not fit is dropped. */
export const outputOverflows: Rule = {
  id: 'converters/output-overflows',
  level: 'fault',
  title: 'A multiplexer is given more than its output carries.',
  sources: ['practice-0183-load', 'computed-serial'],
  check: ({ index, plan }) => {
    const limit = limitOf(index.boat, 'nmea0183-load');
    const talkers = new Set(
      plan.joins
        .filter(({ kind }) => kind === 'nmea0183')
        .flatMap(({ members }) => members.filter(({ as }) => as === 'talk').map(({ kit, port }) => `${kit}.${port}`)),
    );
    return [...talkers].flatMap((talker) => {
      if (inputsOfTalker(index, talker) < 2) return [];
      const charsPerS = talkedCharsPerS(lineTalks(index, plan.joins, talker));
      const { sharePct } = lineLoad({ charsPerS, baud: baudOf(portOf(index, talker)) });
      if (sharePct <= limit.value) return [];
      return [
        {
          about: [talker],
          level: sharePct > 100 ? ('fault' as const) : ('doubt' as const),
          says: `The inputs of ${unitName(index, talker)} bring ${charsPerS.toFixed(0)} characters a second together; its output carries ${(charsPerS / (sharePct / 100)).toFixed(0)}. That is ${sharePct.toFixed(0)} %, and ${sharePct > 100 ? 'sentences are dropped' : 'when all speak at once sentences may be dropped'}.`,
          measured: { value: sharePct, unit: '%' },
          limit: limitPart(limit),
          cure: 'Set the output to 38400 baud if its listeners can, or let fewer sentences through.',
        },
      ];
    });
  },
};
