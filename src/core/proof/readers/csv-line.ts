import { isFastPacket } from '../../facts/pgns.ts';
import { byteOf, hexAt, isLineEnd, none, skipBlanks } from './line-bytes.ts';
import { readStamp } from './time-stamp.ts';

/** The most bytes a message of several frames carries, with the longer of the two ways to send one. */
const longestMessageBytes = 1785;
/** From this number on a line is about the recorder’s own interface, not of the bus. */
const firstRecorderNumber = 262_144;
const mostDigits = 6;
const frameBytes = 8;

/** One line of comma-separated text, filled by `readCsvLine` again and again. */
export interface CsvLine {
  timeUs: number | undefined;
  priority: number;
  pgn: number;
  source: number;
  destination: number;
  length: number;
  readonly bytes: Uint8Array;
  /** the five above as they are read */
  readonly numbers: Uint32Array;
  /** whether lines before held joined messages, and frames of long ones */
  hasJoined: boolean;
  hasFrames: boolean;
  /** what the line holds */
  kind: 'frame' | 'message' | 'recorder-note';
}

/** An empty line to be filled. */
export const emptyCsvLine = (): CsvLine => ({
  timeUs: undefined,
  priority: 0,
  pgn: 0,
  source: 0,
  destination: 0,
  length: 0,
  bytes: new Uint8Array(longestMessageBytes),
  numbers: new Uint32Array(5),
  hasJoined: false,
  hasFrames: false,
  kind: 'frame',
});

/** The numbers of a line in their order, and the largest each may be. */
const priority = 0;
const pgn = 1;
const source = 2;
const destination = 3;
const length = 4;
const largest: readonly number[] = [7, 999_999, 255, 255, longestMessageBytes];

/** Whole numbers, each with the comma behind it; the last may end the line where it is zero. */
const readNumbers = (bytes: Uint8Array, from: number, into: Uint32Array): number => {
  let at = from;
  for (let index = 0; index < largest.length; index += 1) {
    at = skipBlanks(bytes, at);
    const first = at;
    let value = 0;
    for (let digit = hexAt(bytes, at); digit < 10 && at - first <= mostDigits; digit = hexAt(bytes, at)) {
      value = value * 10 + digit;
      at += 1;
    }
    if (at === first || value > (largest[index] ?? 0)) return none;
    into[index] = value;
    at = skipBlanks(bytes, at);
    if (bytes[at] === byteOf.comma) at += 1;
    else return index === length && value === 0 && isLineEnd(bytes[at]) ? at : none;
  }
  return at;
};

const readBytes = (bytes: Uint8Array, from: number, into: CsvLine): number => {
  let at = from;
  for (let index = 0; index < into.length; index += 1) {
    at = skipBlanks(bytes, at);
    const high = hexAt(bytes, at);
    const low = hexAt(bytes, at + 1);
    if ((high | low) > 15) return none;
    into.bytes[index] = high * 16 + low;
    at = skipBlanks(bytes, at + 2);
    if (index + 1 < into.length) {
      if (bytes[at] !== byteOf.comma) return none;
      at += 1;
    }
  }
  return at;
};

/**
 * Whether a line is a frame or a message joined already. More than eight bytes are a message. Fewer than eight of a long
 * message are one too, because its frames are filled up to eight – but some senders do not fill their last one, so a
 * recording that showed frames of long messages, and nothing joined, goes on with frames.
 */
const kindOf = (line: CsvLine): CsvLine['kind'] => {
  const { pgn: number, length: bytes } = line;
  if (number >= firstRecorderNumber) return 'recorder-note';
  if (bytes > frameBytes) {
    line.hasJoined = true;
    return 'message';
  }
  if (!isFastPacket(number)) return 'frame';
  if (bytes === frameBytes) line.hasFrames = true;
  return bytes === frameBytes || (line.hasFrames && !line.hasJoined) ? 'frame' : 'message';
};

/**
 * Reads `time,priority,PGN,source,destination,length,hex,…` from its first byte that is no blank, and returns the
 * position behind it, or `none`. The time is a date with a clock, with or without a fraction, or seconds since 1970.
 *
 * @example 2026-05-01T10:00:00.250Z,2,127250,35,255,8,ff,72,5a,ff,7f,ff,7f,fd
 */
export const readCsvLine = (bytes: Uint8Array, from: number, into: CsvLine): number => {
  let at = readStamp(bytes, from, into);
  if (at === none) return none;
  at = skipBlanks(bytes, at);
  if (bytes[at] !== byteOf.comma) return none;
  at += 1;
  at = readNumbers(bytes, at, into.numbers);
  if (at === none) return none;
  const { numbers } = into;
  into.priority = numbers[priority] ?? 0;
  into.pgn = numbers[pgn] ?? 0;
  into.source = numbers[source] ?? 0;
  into.destination = numbers[destination] ?? 0;
  into.length = numbers[length] ?? 0;
  at = readBytes(bytes, at, into);
  if (at === none || !isLineEnd(bytes[skipBlanks(bytes, at)])) return none;
  into.kind = kindOf(into);
  return at;
};
