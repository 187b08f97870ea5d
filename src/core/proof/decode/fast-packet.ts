import { pgnOfCanId } from '../readers/can-id.ts';

/** How the fast packets of a recording came through. */
export interface FastPacketCounts {
  /** messages put together, all frames in order */
  readonly complete: number;
  /** continuation frames without an open first frame */
  readonly orphan: number;
  /** messages dropped because a frame was missing or out of order */
  readonly outOfSequence: number;
  /** messages begun anew before they were whole */
  readonly overwritten: number;
  /** messages still open at the end of the recording */
  readonly openAtEnd: number;
  /** first frames that could not be one: fewer than two bytes, or a length over 223 */
  readonly malformed: number;
}

/** What `take` needs of a frame. */
interface FastPacketFrame {
  readonly id: number;
  readonly length: number;
  readonly data: Uint8Array;
}

/** Puts fast packets together, frame by frame. */
export interface FastPackets {
  /**
   * The whole message once its last frame is in, else undefined. The bytes are only good until the next call.
   * Never repairs: a lost or swapped frame costs the message, and is counted.
   */
  take(frame: FastPacketFrame): Uint8Array | undefined;
  counts(): FastPacketCounts;
}

const longestMessageBytes = 223;
const mostOpen = 4096;

/**
 * Charger and inverter status, which some senders put in a plain single frame. As fast packet these are short:
 * a first frame with another length is such a single one.
 */
const isSometimesSingle = (pgn: number): boolean => pgn === 127_507 || pgn === 127_509;
const leastLengthOfSometimesSingle = 3;
const mostLengthOfSometimesSingle = 13;

interface OpenMessage {
  length: number;
  nextCounter: number;
  readonly bytes: Uint8Array;
}

/** Length of the message a first frame opens; undefined when it can be none. */
const lengthOpened = (frame: FastPacketFrame): number | undefined => {
  const length = frame.data[1];
  return frame.length < 2 || length === undefined || length > longestMessageBytes ? undefined : length;
};

const looksPlainSingle = (frame: FastPacketFrame): boolean => {
  const counter = (frame.data[0] ?? 0) & 0x1f;
  const length = frame.data[1] ?? 0;
  return counter !== 0 || length < leastLengthOfSometimesSingle || length > mostLengthOfSometimesSingle;
};

/**
 * Starts putting fast packets together (source: pgn-database, packet framing). Messages are told apart by source,
 * destination, number and sequence; frames must come in strict order. Frames of other messages are not for `take`.
 */
export const startFastPackets = (): FastPackets => {
  const tally = { complete: 0, orphan: 0, outOfSequence: 0, overwritten: 0, malformed: 0 };
  const open = new Map<number, OpenMessage>();
  const spare: OpenMessage[] = [];
  const sendsInParts = new Set<number>();

  const close = (key: number, message: OpenMessage): void => {
    open.delete(key);
    spare.push(message);
  };

  /** A recording full of first frames only must not fill the memory: the oldest open message makes room. */
  const makeRoom = (): void => {
    if (open.size < mostOpen) return;
    const [oldest] = open;
    if (oldest === undefined) return;
    close(...oldest);
    tally.outOfSequence += 1;
  };

  const opened = (key: number, frame: FastPacketFrame): OpenMessage | undefined => {
    const before = open.get(key);
    if (before !== undefined) {
      tally.overwritten += 1;
      close(key, before);
    }
    const length = lengthOpened(frame);
    if (length === undefined) {
      tally.malformed += 1;
      return undefined;
    }
    makeRoom();
    const message = spare.pop() ?? { length: 0, nextCounter: 0, bytes: new Uint8Array(6 + 31 * 7) };
    message.length = length;
    message.nextCounter = 1;
    open.set(key, message);
    return message;
  };

  const copyData = (message: OpenMessage, frame: FastPacketFrame, counter: number): void => {
    const from = counter === 0 ? 2 : 1;
    const to = counter === 0 ? 0 : 6 + (counter - 1) * 7;
    for (let index = from; index < 8; index += 1) {
      message.bytes[to + index - from] = index < frame.length ? (frame.data[index] ?? 0) : 0xff;
    }
  };

  /** Bytes a message has after the frame with this counter, were all its frames full. */
  const bytesHeld = (counter: number): number => 6 + counter * 7;

  const finished = (key: number, message: OpenMessage): Uint8Array => {
    close(key, message);
    tally.complete += 1;
    const sender = key >>> 3;
    if (message.nextCounter > 1 && isSometimesSingle(pgnOfCanId(sender))) sendsInParts.add(sender);
    return message.bytes.subarray(0, message.length);
  };

  const continued = (key: number, counter: number): OpenMessage | undefined => {
    const message = open.get(key);
    if (message === undefined) {
      tally.orphan += 1;
      return undefined;
    }
    if (counter === message.nextCounter) {
      message.nextCounter += 1;
      return message;
    }
    tally.outOfSequence += 1;
    close(key, message);
    return undefined;
  };

  return {
    take(frame) {
      const first = frame.data[0] ?? 0;
      const counter = first & 0x1f;
      // Without its priority the identifier is source, destination and number in one; 26 bits leave room for the sequence.
      const sender = frame.id & 0x3ff_ffff;
      const key = sender * 8 + (first >> 5);
      if (isSometimesSingle(pgnOfCanId(frame.id)) && !open.has(key) && !sendsInParts.has(sender)) {
        if (looksPlainSingle(frame)) return frame.data.subarray(0, frame.length);
      }
      const message = counter === 0 ? opened(key, frame) : continued(key, counter);
      if (message === undefined) return undefined;
      copyData(message, frame, counter);
      return bytesHeld(counter) >= message.length ? finished(key, message) : undefined;
    },
    counts: () => ({ ...tally, openAtEnd: open.size }),
  };
};
