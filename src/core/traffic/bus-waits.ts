import type { BusMessage } from './bus-messages.ts';
import { messageWaits } from './message-waits.ts';

/** Longest waits on a bus, ms; a wait that nothing bounds is absent. */
export interface BusWaits {
  /** of heading, rate of turn and rudder; absent also where none of them is sent */
  readonly steeringMs?: number;
  /** of any message, where a sender queues all frames of it at once */
  readonly anyMs?: number;
  /** of any message, where senders hand the bus one frame at a time */
  readonly anyFedSinglyMs?: number;
}

/** What a pilot steers by: heading, rate of turn, rudder. */
const steering: ReadonlySet<number> = new Set([127_250, 127_251, 127_245]);

/** The longest of several waits, ms; undefined where one has no bound, or there is none. */
const longestMs = (waitsUs: readonly (number | undefined)[]): number | undefined => {
  const known = waitsUs.filter((us) => us !== undefined);
  return known.length === 0 || known.length < waitsUs.length ? undefined : Math.max(...known) / 1000;
};

/** Longest waits on a bus that carries these messages, at 250 kbit/s, every frame at its longest. Source: davis-2007. */
export const busWaits = (messages: readonly BusMessage[]): BusWaits => {
  const waits = [...messageWaits(messages).values()];
  const steeringMs = longestMs(waits.filter(({ pgn }) => steering.has(pgn)).map(({ us }) => us));
  const anyMs = longestMs(waits.map(({ us }) => us));
  const anyFedSinglyMs = longestMs(waits.map(({ fedSinglyUs }) => fedSinglyUs));
  return {
    ...(steeringMs === undefined ? {} : { steeringMs }),
    ...(anyMs === undefined ? {} : { anyMs }),
    ...(anyFedSinglyMs === undefined ? {} : { anyFedSinglyMs }),
  };
};
