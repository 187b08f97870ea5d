import { UserError } from '../../boat/user-error.ts';
import { emptyFrame, type RecordedFrame, type RecordingReader } from './recorded-frame.ts';

const fileHeaderBytes = 24;
const recordHeaderBytes = 16;
const socketCanLink = 227;
const extendedFlag = 0x8000_0000;
const remoteFlag = 0x4000_0000;
const errorFlag = 0x2000_0000;
/** Longest record believed; a longer one means that the file is damaged and the rest cannot be told apart. */
const longestRecordBytes = 262_144;

interface ByteOrder {
  readonly little: boolean;
  readonly nanoseconds: boolean;
}

const uint32 = (bytes: Uint8Array, at: number, little: boolean): number => {
  const a = bytes[at] ?? 0;
  const b = bytes[at + 1] ?? 0;
  const c = bytes[at + 2] ?? 0;
  const d = bytes[at + 3] ?? 0;
  return (little ? a | (b << 8) | (c << 16) | (d << 24) : (a << 24) | (b << 16) | (c << 8) | d) >>> 0;
};

const orderOf = (bytes: Uint8Array): ByteOrder | undefined => {
  for (const little of [true, false]) {
    const magic = uint32(bytes, 0, little);
    if (magic === 0xa1b2_c3d4) return { little, nanoseconds: false };
    if (magic === 0xa1b2_3c4d) return { little, nanoseconds: true };
  }
  return undefined;
};

/** Whether a recording begins as a pcap file of either byte order, in microseconds or nanoseconds. */
export const looksLikePcap = (bytes: Uint8Array): boolean => bytes.length >= 4 && orderOf(bytes) !== undefined;

const readFileHeader = (bytes: Uint8Array): ByteOrder => {
  const order = orderOf(bytes);
  if (order === undefined) {
    throw new UserError({ says: 'This is not a pcap recording.', whatToDo: 'Give candump text or a pcap file.' });
  }
  // The bits above are about checksums of other networks.
  const link = uint32(bytes, 20, order.little) & 0xffff;
  if (link !== socketCanLink) {
    throw new UserError({
      says: `This pcap file holds another kind of network (link type ${link}); a bus recording has link type 227.`,
      whatToDo: 'Record the bus interface itself, for example can0.',
    });
  }
  return order;
};

/** Fills the frame from a record's bytes: identifier big-endian, length in byte 4, data from byte 8. False = no frame. */
const readRecord = (bytes: Uint8Array, frame: RecordedFrame): boolean => {
  const length = bytes[4] ?? 0;
  const flagged = uint32(bytes, 0, false);
  frame.extended = (flagged & extendedFlag) !== 0;
  frame.remote = (flagged & remoteFlag) !== 0;
  frame.error = (flagged & errorFlag) !== 0;
  frame.id = flagged & (frame.extended || frame.error ? 0x1fff_ffff : 0x7ff);
  frame.length = length;
  if (length > 8 || bytes.length < 8 + (frame.remote ? 0 : length)) return false;
  for (let at = 0; at < length; at += 1) frame.data[at] = bytes[8 + at] ?? 0;
  return true;
};

/**
 * Reads a pcap file of link type 227, either byte order, times in microseconds or nanoseconds. A record cut off at
 * the end is left out. Throws UserError when the file is of another network; damaged records are counted, never fatal.
 */
export const startPcapReader = (onFrame: (frame: RecordedFrame) => void): RecordingReader => {
  const frame = emptyFrame();
  const tally = { frames: 0, broken: 0 };
  let pending = new Uint8Array(0);
  let order: ByteOrder | undefined;
  let damaged = false;

  const take = (record: Uint8Array, timeUs: number): void => {
    frame.timeUs = timeUs;
    if (readRecord(record, frame)) {
      tally.frames += 1;
      onFrame(frame);
    } else tally.broken += 1;
  };

  /** Reads the records that are whole and returns where the first one that is not begins. */
  const readRecords = (bytes: Uint8Array, { little, nanoseconds }: ByteOrder, from: number): number => {
    let at = from;
    while (at + recordHeaderBytes <= bytes.length) {
      const captured = uint32(bytes, at + 8, little);
      if (captured > longestRecordBytes) {
        damaged = true;
        tally.broken += 1;
        return bytes.length;
      }
      const end = at + recordHeaderBytes + captured;
      if (end > bytes.length) return at;
      const fraction = uint32(bytes, at + 4, little);
      const fractionUs = nanoseconds ? Math.floor(fraction / 1000) : fraction;
      take(bytes.subarray(at + recordHeaderBytes, end), uint32(bytes, at, little) * 1_000_000 + fractionUs);
      at = end;
    }
    return at;
  };

  const readOn = (bytes: Uint8Array): void => {
    let from = 0;
    if (order === undefined) {
      if (bytes.length < fileHeaderBytes) {
        pending = bytes.slice();
        return;
      }
      order = readFileHeader(bytes);
      from = fileHeaderBytes;
    }
    pending = bytes.slice(readRecords(bytes, order, from));
  };

  return {
    push(chunk) {
      if (damaged) return;
      if (pending.length === 0) {
        readOn(chunk);
        return;
      }
      const joined = new Uint8Array(pending.length + chunk.length);
      joined.set(pending);
      joined.set(chunk, pending.length);
      readOn(joined);
    },
    end: () => ({ ...tally, comments: 0, cutShort: damaged || pending.length > 0 }),
  };
};
