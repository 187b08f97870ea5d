import { limitValue } from '../../boat/limit-value.ts';
import { pgnInfo } from '../../facts/pgns.ts';
import type { BusTraffic, SentEntry } from '../../traffic-shape.ts';
import type { Rule } from '../rule.ts';
import { busName, figurePart, unitName } from '../rule-words.ts';

/** How many of the messages are named; the traffic of the plan has them all. */
const mostNamed = 3;

interface Late {
  readonly port: string;
  readonly message: SentEntry;
  /** Infinity where nothing bounds it */
  readonly waitMs: number;
}

/** Messages that may still wait when their next is due, the worst first. Other ships’ reports are due at no set time. */
const lateOn = ({ senders }: BusTraffic): readonly Late[] =>
  senders
    .flatMap(({ port, messages }) =>
      messages.map((message) => ({ port, message, waitMs: message.waitMs ?? Number.POSITIVE_INFINITY })),
    )
    .filter(({ message, waitMs }) => message.rate !== 'waters' && waitMs > message.everyMs)
    .sort((one, other) => other.waitMs / other.message.everyMs - one.waitMs / one.message.everyMs);

const waitWords = (waitMs: number): string =>
  Number.isFinite(waitMs) ? `up to ${waitMs.toFixed(0)} ms` : 'without a bound';

/** What is not through when its next is due is lost in most units, which keep the newest only. */
export const messageWaitsPastItsTurn: Rule = {
  id: 'traffic/message-waits-past-its-turn',
  level: 'doubt',
  title: 'A message may still wait when its next is due.',
  sources: ['davis-2007', 'computed-packet-wait'],
  check: ({ index, plan }) => {
    const stopPct = limitValue(index.boat, 'nmea2000-load-stop');
    return plan.traffic.buses.flatMap((bus) => {
      const late = lateOn(bus);
      const [worst] = late;
      // a bus fuller than that is for traffic/bus-too-full to speak of
      if (worst === undefined || bus.worstPct > stopPct) return [];
      const named = late
        .slice(0, mostNamed)
        .map(
          ({ port, message, waitMs }) =>
            `${pgnInfo(message.pgn)?.name ?? 'a message'} (${message.pgn}) of ${unitName(index, port)}, every ${message.everyMs} ms, waits ${waitWords(waitMs)}`,
        );
      const more = late.length > named.length ? `, and ${late.length - named.length} more` : '';
      return [
        {
          about: [bus.bus],
          says: `At the worst a message on ${busName(index, bus.bus)} is not through when its next is due: ${named.join('; ')}${more}.`,
          ...(Number.isFinite(worst.waitMs) ? { measured: { value: worst.waitMs, unit: 'ms' } } : {}),
          limit: figurePart({ value: worst.message.everyMs, unit: 'ms', source: 'davis-2007' }),
          cure: 'Let long messages that nobody reads (satellites in view above all) be sent less often or by one unit only, or send this one less often.',
        },
      ];
    });
  },
};
