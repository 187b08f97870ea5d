import { portOf } from '../../boat/boat-index.ts';
import { limitOf } from '../../boat/limit-of.ts';
import { nmea0183 } from '../../facts/nmea0183.ts';
import { charsPerSecond, lineLoad } from '../../joins/line-load.ts';
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
      const port = portOf(index, talker);
      const baud = port?.baud ?? nmea0183.baud.value;
      const { charsPerS, sharePct } = lineLoad({ charsPerS: charsPerSecond(port?.sends ?? []), baud });
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
