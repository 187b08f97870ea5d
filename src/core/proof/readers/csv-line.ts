import { isFastPacket } from '../../facts/pgns.ts';
import { byteOf, hexAt, isLineEnd, none, skipBlanks } from './line-bytes.ts';
import { readStamp } from './time-stamp.ts';

/** The most bytes a message of several frames carries, with the longer of the two ways to send one. */
const longestMessageBytes = 1785;
/** From this number on a line is about the recorder’s own interface, not of the bus. */
const firstRecorderNumber = 262_144;
const mostDigits = 6;

/** One line of comma-separated text, filled by `readCsvLine` again and again. */
export interface CsvLine {
  timeUs: number | undefined;
  priority: number;
  pgn: number;
  source: number;
  destination: number;
  length: number;
  readonly bytes: Uint8Array;
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
  kind: 'frame',
});

const numberNames = ['priority', 'pgn', 'source', 'destination', 'length'] as const;
const largest = { priority: 7, pgn: 999_999, source: 255, destination: 255, length: longestMessageBytes } as const;

/** One whole number and the comma behind it, if one stands there. */
const readNumber = (bytes: Uint8Array, from: number, into: CsvLine, name: (typeof numberNames)[number]): number => {
  let at = skipBlanks(bytes, from);
  let value = 0;
  const first = at;
  for (let digit = hexAt(bytes, at); digit < 10; digit = hexAt(bytes, at)) {
    value = value * 10 + digit;
    at += 1;
    if (at - first > mostDigits) return none;
  }
  if (at === first || value > largest[name]) return none;
  into[name] = value;
  at = skipBlanks(bytes, at);
  if (bytes[at] === byteOf.comma) return at + 1;
  return name === 'length' && value === 0 && isLineEnd(bytes[at]) ? at : none;
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
 * A frame of a long message always carries eight bytes, so a shorter line of such a number is a whole message, and a
 * longer one of any number is.
 */
const kindOf = ({ pgn, length }: CsvLine): CsvLine['kind'] => {
  if (pgn >= firstRecorderNumber) return 'recorder-note';
  return length > 8 || (length < 8 && isFastPacket(pgn)) ? 'message' : 'frame';
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
  for (const name of numberNames) {
    at = readNumber(bytes, at, into, name);
    if (at === none) return none;
  }
  at = readBytes(bytes, at, into);
  if (at === none || !isLineEnd(bytes[skipBlanks(bytes, at)])) return none;
  into.kind = kindOf(into);
  return at;
};
