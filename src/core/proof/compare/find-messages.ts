import type { SurveySender } from '../survey/survey-report.ts';
import { type Came, messageState } from './message-state.ts';
import type { PlannedSend } from './planned-sends.ts';
import type { ProofMessage } from './proof-report.ts';
import type { SeenBus, SeenLine } from './seen.ts';

const entryOf = (send: PlannedSend, came: Came | undefined, durationS: number | undefined): ProofMessage => ({
  port: send.port,
  on: send.on,
  message: send.message,
  instances: send.instances,
  ...(send.everyMs === undefined ? {} : { plannedMs: send.everyMs }),
  count: came?.messages ?? 0,
  empty: came?.empty ?? 0,
  ...messageState(send, came, durationS),
});

/** One message number from one sender. */
export const cameFrom = (sender: SurveySender, message: number | string): Came | undefined => {
  const sent = sender.sends.find(({ pgn }) => pgn === message);
  if (sent === undefined) return undefined;
  const { messages, medianMs, meanMs, parts } = sent;
  return { messages, empty: parts.reduce((sum, part) => sum + part.empty, 0), medianMs, meanMs, parts };
};

/** The senders a unit speaks through. */
export const sendersOf = (bus: SeenBus, unit: string): readonly SurveySender[] =>
  (bus.matches.matches.find((match) => match.unit === unit)?.senders ?? []).flatMap((at) => bus.senders[at] ?? []);

/** How each message planned on a bus came. */
export const messagesOnBus = (bus: SeenBus): ProofMessage[] =>
  bus.sends.map((send) => {
    const came = sendersOf(bus, send.unit).flatMap((sender) => cameFrom(sender, send.message) ?? []);
    return entryOf(send, came[0], bus.wire.time?.durationS);
  });

/** How each sentence planned on a line came. */
export const messagesOnLine = ({ sends, watched, wire }: SeenLine): ProofMessage[] =>
  sends.map((send) => {
    const record = watched.line.records().find(({ formatter }) => formatter === send.message);
    const came =
      record === undefined
        ? undefined
        : {
            messages: record.count,
            empty: record.empty,
            medianMs: record.intervals.medianMs(),
            meanMs: record.intervals.meanMs(),
          };
    return entryOf(send, came, wire.time?.durationS);
  });
