import { UserError } from '../../boat/user-error.ts';
import { joinedBytes, uint32At } from './file-words.ts';
import { startTally } from './reader-tally.ts';
import { emptyFrame } from './recorded-frame.ts';
import type { RecordingReader } from './recording-reader-shape.ts';
import type { RecordingSink } from './recording-sink.ts';
import { readSocketCanRecord, socketCanLink } from './socketcan-record.ts';

const fileHeaderBytes = 24;
const recordHeaderBytes = 16;
/** Longest record believed; a longer one means that the file is damaged and the rest cannot be told apart. */
const longestRecordBytes = 262_144;

interface ByteOrder {
  readonly little: boolean;
  readonly nanoseconds: boolean;
}

const orderOf = (bytes: Uint8Array): ByteOrder | undefined => {
  for (const little of [true, false]) {
    const magic = uint32At(bytes, 0, little);
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
    throw new UserError({ says: 'This is not a pcap recording.', whatToDo: 'Record the bus once more.' });
  }
  // The bits above are about checksums of other networks.
  const link = uint32At(bytes, 20, order.little) & 0xffff;
  if (link !== socketCanLink) {
    throw new UserError({
      says: `This pcap file holds another kind of network (link type ${link}); a bus recording has link type 227.`,
      whatToDo: 'Record the bus interface itself, for example can0.',
    });
  }
  return order;
};

/**
 * Reads a pcap file of link type 227, either byte order, times in microseconds or nanoseconds. A record cut off at
 * the end is left out. Throws UserError when the file is of another network; damaged records are counted, never fatal.
 */
export const startPcapReader = ({ onFrame }: RecordingSink): RecordingReader => {
  const frame = emptyFrame();
  const tally = startTally();
  let pending = new Uint8Array(0);
  let pendingAt = 0;
  let order: ByteOrder | undefined;
  let damaged = false;

  const take = (record: Uint8Array, timeUs: number, byte: number): void => {
    frame.timeUs = timeUs;
    if (readSocketCanRecord(record, frame)) {
      tally.frames += 1;
      onFrame?.(frame);
    } else tally.broken({ byte, says: 'a record that holds no frame of the bus' });
  };

  /** Reads the records that are whole and returns where the first one that is not begins. */
  const readRecords = (bytes: Uint8Array, { little, nanoseconds }: ByteOrder, from: number): number => {
    let at = from;
    while (at + recordHeaderBytes <= bytes.length) {
      const captured = uint32At(bytes, at + 8, little);
      if (captured > longestRecordBytes) {
        damaged = true;
        tally.broken({
          byte: pendingAt + at,
          says: `a record of ${captured} bytes: what follows cannot be told apart`,
        });
        return bytes.length;
      }
      const end = at + recordHeaderBytes + captured;
      if (end > bytes.length) return at;
      const fraction = uint32At(bytes, at + 4, little);
      const fractionUs = nanoseconds ? Math.floor(fraction / 1000) : fraction;
      const timeUs = uint32At(bytes, at, little) * 1_000_000 + fractionUs;
      take(bytes.subarray(at + recordHeaderBytes, end), timeUs, pendingAt + at);
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
    const readTo = readRecords(bytes, order, from);
    pending = bytes.slice(readTo);
    pendingAt += readTo;
  };

  return {
    push(chunk) {
      if (!damaged) readOn(joinedBytes(pending, chunk));
    },
    end: () => tally.counts({ cutShort: damaged || pending.length > 0 }),
  };
};
