import { limitOf } from '../../boat/limit-of.ts';
import { pgnInfo } from '../../facts/pgns.ts';
import type { SentEntry } from '../../traffic-shape.ts';
import type { Rule } from '../rule.ts';
import { busName, limitPart, unitName } from '../rule-words.ts';

/** How many times as often as usual a message comes; what another unit sends is that unit's to answer for. */
const timesUsual = ({ usualMs, everyMs, rate }: SentEntry): number =>
  usualMs === undefined || rate === 'passed' || rate === 'waters' ? 1 : usualMs / everyMs;

/** A sensor left at the rate of its trial run takes room on the bus, and gives a screen nothing it shows. */
export const sensorLeftFast: Rule = {
  id: 'traffic/sensor-left-fast',
  level: 'advice',
  title: 'A unit sends a message far more often than usual.',
  sources: ['choice-fast-sender', 'pgn-database'],
  check: ({ index, plan }) => {
    const limit = limitOf(index.boat, 'nmea2000-times-usual');
    return plan.traffic.buses.flatMap(({ bus, senders }) =>
      senders.flatMap(({ port, messages }) => {
        const fast = messages
          .filter((message) => timesUsual(message) >= limit.value)
          .sort((one, other) => timesUsual(other) - timesUsual(one));
        const [worst] = fast;
        if (worst === undefined) return [];
        const named = fast.map(
          ({ pgn, everyMs, usualMs = 0, worstPct }) =>
            `${pgnInfo(pgn)?.name ?? 'a message'} (${pgn}) every ${everyMs} ms, usually ${usualMs} ms: ${worstPct.toFixed(2)} % of ${busName(index, bus)}`,
        );
        return [
          {
            about: [port],
            says: `${unitName(index, port)} sends ${named.join('; ')}.`,
            measured: { value: timesUsual(worst), unit: limit.unit },
            limit: limitPart(limit),
            cure: `Unless something aboard needs it so often, set it to the usual ${worst.usualMs ?? 0} ms.`,
          },
        ];
      }),
    );
  },
};
