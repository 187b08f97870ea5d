import { portOf } from '../../boat/boat-index.ts';
import { limitOf } from '../../boat/limit-of.ts';
import { lineLoad } from '../../joins/line-load.ts';
import { baudOf, inputsOfTalker, lineTalks, talkedCharsPerS } from '../../traffic/line-talks.ts';
import type { Rule } from '../rule.ts';
import { limitPart, unitName } from '../rule-words.ts';

/** Sentences come in bursts; what does not fit the line is lost without a word. */
export const lineTooFull: Rule = {
  id: 'wiring/line-too-full',
  level: 'fault',
  title: 'A 0183 line is given more than it carries.',
  sources: ['practice-0183-load', 'computed-serial'],
  check: ({ index, plan }) => {
    const limit = limitOf(index.boat, 'nmea0183-load');
    const talkers = new Set(
      plan.joins
        .filter(({ kind }) => kind === 'nmea0183')
        .flatMap(({ members }) => members.filter(({ as }) => as === 'talk').map(({ kit, port }) => `${kit}.${port}`)),
    );
    return [...talkers].flatMap((talker) => {
      // what several inputs bring to an output together is for converters/output-overflows to say
      if (inputsOfTalker(index, talker) > 1) return [];
      const baud = baudOf(portOf(index, talker));
      const sent = talkedCharsPerS(lineTalks(index, plan.joins, talker));
      const { charsPerS, sharePct } = lineLoad({ charsPerS: sent, baud });
      if (sharePct <= limit.value) return [];
      return [
        {
          about: [talker],
          level: sharePct > 100 ? ('fault' as const) : ('doubt' as const),
          says: `${unitName(index, talker)} sends ${charsPerS.toFixed(0)} characters a second on a line of ${baud} baud: ${sharePct.toFixed(0)} % of what it carries; plan for ${limit.value} % at most.`,
          measured: { value: sharePct, unit: '%' },
          limit: limitPart(limit),
          cure: 'Switch off sentences nobody on this line needs, send them less often, or use a faster line if the listener can.',
        },
      ];
    });
  },
};
