import type { BusMessage } from './bus-messages.ts';
import { worstBits } from './frame-length.ts';
import { longestWait } from './longest-wait.ts';
import { messageFrameBits } from './message-load.ts';
import type { WaitingMessage, Winning } from './waiting-message.ts';

const bitUs = 4;

/** A full frame: whatever else is on the bus, something asked for now and then may just have begun. */
const blockingUs = worstBits(8) * bitUs;

type Asked = Pick<WaitingMessage, 'frameUs' | 'frames' | 'everyUs'> & Pick<BusMessage, 'pgn' | 'priority'>;

const askedOf = (message: BusMessage): Asked => ({
  pgn: message.pgn,
  priority: message.priority,
  frames: message.frames,
  frameUs: messageFrameBits(message) * bitUs,
  // Rounded to what is more often, so that the bound holds.
  everyUs: Math.max(1, Math.floor(message.everyMs * 1000)),
});

/** Messages of one identifier but for the address of the sender, most urgent first. */
const byUrgency = (messages: readonly BusMessage[]): readonly (readonly BusMessage[])[] => {
  const alike = new Map<number, BusMessage[]>();
  for (const message of messages) {
    const key = message.priority * 2 ** 18 + message.pgn;
    const so = alike.get(key);
    if (so === undefined) alike.set(key, [message]);
    else so.push(message);
  }
  return [...alike].sort(([a], [b]) => a - b).map(([, some]) => some);
};

/** Everything that comes equally often is one entry: a long bus then costs no more than a short one. */
const add = (winning: Map<number, number>, { everyUs, frames, frameUs }: Asked, count: number): void => {
  winning.set(everyUs, (winning.get(everyUs) ?? 0) + count * frames * frameUs);
};

/** By interval, so that the order of the file cannot move a sum. */
const inOrder = (winning: ReadonlyMap<number, number>): readonly Winning[] =>
  [...winning].sort(([a], [b]) => a - b).map(([everyUs, takesUs]) => ({ everyUs, takesUs }));

/**
 * Every distinct message with all that wins over it. Addresses are given out aboard, so that of two senders of one message
 * each is taken to lose against the other.
 */
const waitingMessages = (messages: readonly BusMessage[]): readonly (Asked & { winning: readonly Winning[] })[] => {
  const winning = new Map<number, number>();
  return byUrgency(messages).flatMap((alike) => {
    for (const message of alike) add(winning, askedOf(message), message.count);
    const distinct = new Map(
      alike.map(askedOf).map((asked) => [`${asked.frames} ${asked.frameUs} ${asked.everyUs}`, asked]),
    );
    return [...distinct.values()].map((asked) => {
      const others = new Map(winning);
      add(others, asked, -1);
      return { ...asked, winning: inOrder(others) };
    });
  });
};

/** The longest wait of one message; undefined where nothing bounds it. */
export interface MessageWait {
  readonly pgn: number;
  /** where the sender queues all its frames at once, µs */
  readonly us: number | undefined;
  /** where it hands the bus one frame at a time, µs */
  readonly fedSinglyUs: number | undefined;
}

const keyOf = ({ pgn, priority, frames, frameUs, everyUs }: Asked): string =>
  [priority, pgn, frames, frameUs, everyUs].join(' ');

/** By what tells one message from another in a queue; messages that are alike wait alike. */
export const waitKey = (message: BusMessage): string => keyOf(askedOf(message));

/**
 * The longest wait of every message on a bus that carries these, at 250 kbit/s, every frame at its longest, by `waitKey`.
 * Source: davis-2007.
 */
export const messageWaits = (messages: readonly BusMessage[]): ReadonlyMap<string, MessageWait> =>
  new Map(
    waitingMessages(messages).map((asked) => [
      keyOf(asked),
      {
        pgn: asked.pgn,
        us: longestWait({ ...asked, blockingUs, bitUs }),
        fedSinglyUs: longestWait({ ...asked, blockingUs, bitUs, fedSingly: true }),
      },
    ]),
  );
