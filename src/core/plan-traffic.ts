import { type BoatIndex, portOf } from './boat/boat-index.ts';
import { byCodeUnit } from './boat/ids.ts';
import { sortedBy } from './boat/sorted-by.ts';
import { pgnInfo } from './facts/pgns.ts';
import { isOfShips, usualWaters } from './facts/waters.ts';
import { lineLoad } from './joins/line-load.ts';
import type { PlanDraft, StandingJoin } from './plan-shape.ts';
import { bursts } from './traffic/burst.ts';
import { exactOverWorst, worstLoadPct } from './traffic/bus-load.ts';
import type { SentMessage } from './traffic/bus-messages.ts';
import { type BusSender, busSenders } from './traffic/bus-senders.ts';
import { baudOf, inputsOfTalker, lineTalks, talkedCharsPerS } from './traffic/line-talks.ts';
import { type MessageWait, messageWaits, waitKey } from './traffic/message-waits.ts';
import type { BusTraffic, LineTraffic, SenderEntry, SentEntry } from './traffic-shape.ts';

/** What the traffic of a boat is planned from. */
export interface TrafficInput {
  readonly index: BoatIndex;
  /** those that stand in the last phase */
  readonly joins: readonly StandingJoin[];
}

export type TrafficParts = Pick<PlanDraft, 'traffic'>;

type Waits = ReadonlyMap<string, MessageWait>;

const framesPerS = (messages: readonly SentMessage[]): number =>
  messages
    .map(({ count, frames, everyMs }) => (1000 * count * frames) / everyMs)
    .sort((a, b) => a - b)
    .reduce((sum, frames) => sum + frames, 0);

const messageEntry = (message: SentMessage, waits: Waits): SentEntry => {
  const { pgn, from, count, everyMs, rate, frames } = message;
  const wait = waits.get(waitKey(message));
  const usualMs = pgnInfo(pgn)?.everyMs;
  return {
    pgn,
    ...(from === undefined ? {} : { from }),
    count,
    everyMs,
    rate,
    ...(usualMs === undefined ? {} : { usualMs }),
    frames,
    framesPerS: framesPerS([message]),
    worstPct: worstLoadPct([message]),
    ...(wait?.us === undefined ? {} : { waitMs: wait.us / 1000 }),
    ...(wait?.fedSinglyUs === undefined ? {} : { waitFedSinglyMs: wait.fedSinglyUs / 1000 }),
  };
};

const loadOf = (messages: readonly SentMessage[]) => {
  const worstPct = worstLoadPct(messages);
  return { averagePct: exactOverWorst * worstPct, worstPct };
};

const senderEntry = ({ port, messages }: BusSender, waits: Waits): SenderEntry => ({
  port,
  framesPerS: framesPerS(messages),
  ...loadOf(messages),
  messages: sortedBy(
    messages.map((message) => messageEntry(message, waits)),
    ({ pgn, from, everyMs, count }) => [pgn, from, everyMs, count],
  ),
});

const busTraffic = ({ index, joins }: TrafficInput, bus: string): BusTraffic[] => {
  const members = joins.filter((join) => join.bus === bus).flatMap((join) => join.members);
  const units = new Set(members.map(({ kit }) => kit)).size;
  if (units === 0) return [];
  const senders = busSenders(index, bus, joins).filter((sender) => sender.messages.length > 0);
  const all = senders.flatMap((sender) => sender.messages);
  const waits = messageWaits(all);
  return [
    {
      bus,
      units,
      ...loadOf(all),
      shipsPct: worstLoadPct(all.filter(({ pgn }) => isOfShips(pgn))),
      senders: sortedBy(
        senders.map((sender) => senderEntry(sender, waits)),
        ({ port }) => [port],
      ),
      bursts: bursts(units).map((burst) => ({ ...burst })),
    },
  ];
};

const lineTraffic = ({ index, joins }: TrafficInput): LineTraffic[] => {
  const joinsOf = new Map<string, string[]>();
  for (const { id, kind, members } of joins)
    for (const { kit, port, as } of members) {
      const talker = `${kit}.${port}`;
      if (kind === 'nmea0183' && as === 'talk') joinsOf.set(talker, [...(joinsOf.get(talker) ?? []), id]);
    }
  return [...joinsOf]
    .sort(([one], [other]) => byCodeUnit(one, other))
    .map(([talker, own]) => {
      const talks = lineTalks(index, joins, talker);
      const baud = baudOf(portOf(index, talker));
      return {
        talker,
        joins: own.sort(byCodeUnit),
        baud,
        inputs: inputsOfTalker(index, talker),
        ...lineLoad({ charsPerS: talkedCharsPerS(talks), baud }),
        sentences: sortedBy(
          talks.map((talked) => ({ ...talked, charsPerS: talkedCharsPerS([talked]) })),
          ({ sentence, from, everyMs }) => [sentence, from, everyMs],
        ),
      };
    });
};

/**
 * What is sent on every bus and on every 0183 line when the refit is done: by sender and message, with how full it makes the
 * bus, how long each message may wait, and what comes at once when all is switched on or everybody is asked. Pure.
 */
export const planTraffic = (input: TrafficInput): TrafficParts => ({
  traffic: {
    waters: input.index.boat.waters ?? usualWaters,
    buses: sortedBy(input.index.boat.buses, ({ id }) => [id]).flatMap(({ id }) => busTraffic(input, id)),
    lines: lineTraffic(input),
  },
});
