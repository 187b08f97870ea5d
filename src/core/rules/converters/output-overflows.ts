import { limitOf } from '../../boat/limit-of.ts';
import { nmea0183 } from '../../facts/nmea0183.ts';
import { lineLoad } from '../../joins/line-load.ts';
import { multiplexedAt } from '../../joins/multiplexed.ts';
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
    const talking = new Set(
      plan.joins.flatMap(({ members }) =>
        members.filter(({ as }) => as === 'talk').map(({ kit, port }) => `${kit}.${port}`),
      ),
    );
    return index.boat.kit.flatMap(({ id }) => {
      const sheet = index.sheetOf.get(id);
      if (sheet === undefined) return [];
      return sheet.ports
        .filter((port) => port.protocol === 'nmea0183' && talking.has(`${id}.${port.id}`))
        .flatMap((port) => {
          const given = multiplexedAt(index, plan.joins, { kit: id, port: port.id });
          if (given === undefined) return [];
          const { charsPerS } = given;
          const { sharePct } = lineLoad({ charsPerS, baud: port.baud ?? nmea0183.baud.value });
          if (sharePct <= limit.value) return [];
          return [
            {
              about: [`${id}.${port.id}`],
              level: sharePct > 100 ? ('fault' as const) : ('doubt' as const),
              says: `The inputs of ${unitName(index, id)} bring ${charsPerS.toFixed(0)} characters a second together; its output carries ${(charsPerS / (sharePct / 100)).toFixed(0)}. That is ${sharePct.toFixed(0)} %, and sentences are dropped.`,
              measured: { value: sharePct, unit: '%' },
              limit: limitPart(limit),
              cure: 'Set the output to 38400 baud if its listeners can, or let fewer sentences through.',
            },
          ];
        });
    });
  },
};
