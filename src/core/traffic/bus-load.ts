import type { BoatIndex } from '../boat/boat-index.ts';
import type { StandingJoin } from '../plan-shape.ts';
import type { BusMessage } from './bus-messages.ts';
import { busSenders } from './bus-senders.ts';
import { type BusWaits, busWaits } from './bus-waits.ts';
import { messageLoadPct } from './message-load.ts';

/** How full a bus is by what its members send again and again, %, and how long a message may wait on it. */
export interface BusLoad {
  /** as measured against the worst case on real buses */
  readonly averagePct: number;
  /** every frame with as many stuff bits as it can have */
  readonly worstPct: number;
  /** absent where nothing is sent again and again */
  readonly wait?: BusWaits;
}

/** Exact frame bits over worst-case bits on a full bus. Source: computed-expected-load. */
export const exactOverWorst = 0.886;

/** Load of all these messages at their worst, %. */
export const worstLoadPct = (messages: readonly BusMessage[]): number =>
  messages
    .map((message) => message.count * messageLoadPct(message))
    // Smallest first, so that the order of the file cannot move the last digit.
    .sort((a, b) => a - b)
    .reduce((sum, load) => sum + load, 0);

/** Load of one bus, and the longest waits on it, from what its joined ports send. `joins` are those that stand. Pure. */
export const busLoad = (index: BoatIndex, busId: string, joins: readonly StandingJoin[]): BusLoad => {
  const messages = busSenders(index, busId, joins).flatMap((sender) => sender.messages);
  const worstPct = worstLoadPct(messages);
  const load = { worstPct, averagePct: exactOverWorst * worstPct };
  return messages.length === 0 ? load : { ...load, wait: busWaits(messages) };
};
