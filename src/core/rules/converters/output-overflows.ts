import { type BoatIndex, portOf } from '../../boat/boat-index.ts';
import { limitOf } from '../../boat/limit-of.ts';
import type { Sheet } from '../../boat/sheet.ts';
import { nmea0183 } from '../../facts/nmea0183.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import { charsPerSecond, lineLoad } from '../../traffic/line-load.ts';
import type { Rule } from '../rule.ts';
import { limitPart, unitName } from '../rule-words.ts';

/** Characters a second that reach one input: all its talkers send. */
const arriving = (index: BoatIndex, joins: readonly StandingJoin[], input: string): number =>
  joins
    .filter(
      ({ kind, members }) =>
        kind === 'nmea0183' && members.some((m) => `${m.kit}.${m.port}` === input && m.as === 'listen'),
    )
    .flatMap(({ members }) => members.filter(({ as }) => as === 'talk'))
    .reduce((sum, { kit, port }) => sum + charsPerSecond(portOf(index, `${kit}.${port}`)?.sends ?? []), 0);

/** Inputs in 0183 whose sentences a unit passes on at one of its outputs. */
const inputsOf = ({ ports, turns = [] }: Sheet, output: string): string[] =>
  turns
    .filter(({ toPort }) => toPort === output)
    .map(({ fromPort }) => fromPort)
    .filter((id) => ports.find((port) => port.id === id)?.protocol === 'nmea0183');

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
          const inputs = [...new Set(inputsOf(sheet, port.id))];
          if (inputs.length < 2) return [];
          const charsPerS = inputs.reduce((sum, input) => sum + arriving(index, plan.joins, `${id}.${input}`), 0);
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
