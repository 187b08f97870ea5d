import { byteOf, hexAt, isBlank, isLineEnd, none, skipBlanks } from './line-bytes.ts';
import type { RecordedFrame } from './recorded-frame.ts';
import { readBracketedTime } from './time-stamp.ts';

// Every step below takes the bytes and a position, fills the frame, and returns the position behind what it read,
// or `none`. A line ends with a line feed, which no step reads past. No strings are made: this is the hot path.

const errorFlag = 0x2000_0000;
const largestId = 0x1fff_ffff;
const largestShortId = 0x7ff;

const skipWord = (bytes: Uint8Array, from: number): number => {
  let at = from;
  while ((bytes[at] ?? 0) > byteOf.space) at += 1;
  return at;
};

/** `(seconds.fraction)`, or a date in the brackets; without the round bracket the frame has no time. */
const readTime = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  frame.timeUs = undefined;
  return bytes[from] === byteOf.openRound ? readBracketedTime(bytes, from, frame) : from;
};

/** 8 hexadecimal digits are a 29-bit identifier (with the error flag above it), 3 an 11-bit one. */
const readId = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  let at = from;
  let id = 0;
  for (let digit = hexAt(bytes, at); digit < 16 && at < from + 9; digit = hexAt(bytes, at)) {
    id = ((id << 4) | digit) >>> 0;
    at += 1;
  }
  frame.extended = at - from === 8;
  frame.error = frame.extended && (id & errorFlag) !== 0;
  frame.id = frame.error ? id - errorFlag : id;
  if (at - from !== 8 && at - from !== 3) return none;
  return frame.id <= (frame.extended ? largestId : largestShortId) ? at : none;
};

/** What stands behind the # of the log form: packed data, or R and a length for a remote frame. */
const readPacked = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  frame.remote = bytes[from] === byteOf.capitalR;
  if (frame.remote) {
    const asked = hexAt(bytes, from + 1);
    frame.length = asked <= 8 ? asked : 0;
    return asked <= 8 ? from + 2 : from + 1;
  }
  let at = from;
  let count = 0;
  for (let high = hexAt(bytes, at); high < 16; high = hexAt(bytes, at)) {
    const low = hexAt(bytes, at + 1);
    if (low > 15 || count === 8) return none;
    frame.data[count] = high * 16 + low;
    count += 1;
    at += bytes[at + 2] === byteOf.point ? 3 : 2;
  }
  frame.length = count;
  return at;
};

/** What stands behind the identifier of the older forms: `[8]  00 FC …`, or `[8] remote request`. */
const readColumns = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  const length = hexAt(bytes, from + 1);
  if (bytes[from] !== byteOf.openSquare || length > 8 || bytes[from + 2] !== byteOf.closeSquare) return none;
  frame.length = length;
  let at = skipBlanks(bytes, from + 3);
  frame.remote = bytes[at] === byteOf.smallR;
  if (frame.remote) return skipWord(bytes, at);
  for (let count = 0; count < length; count += 1) {
    const high = hexAt(bytes, at);
    const low = hexAt(bytes, at + 1);
    if ((high | low) > 15) return none;
    frame.data[count] = high * 16 + low;
    at = count + 1 < length ? skipBlanks(bytes, at + 2) : at + 2;
  }
  return at;
};

/** `<0x18eeff01> [8] …` */
const readAngled = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  if (bytes[from + 1] !== byteOf.zero || bytes[from + 2] !== byteOf.smallX) return none;
  const at = readId(bytes, from + 3, frame);
  return at === none || bytes[at] !== byteOf.closeAngle ? none : readColumns(bytes, skipBlanks(bytes, at + 1), frame);
};

/** `ID#…` or `ID  [8] …`; anything else is not the identifier but the name of the interface. */
const readFromId = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  const at = readId(bytes, from, frame);
  if (at === none) return none;
  return bytes[at] === byteOf.hash
    ? readPacked(bytes, at + 1, frame)
    : readColumns(bytes, skipBlanks(bytes, at), frame);
};

/** Reads one line of candump text in any of its forms, from its first byte that is no blank. */
export const readCandumpLine = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  const at = readTime(bytes, from, frame);
  if (at === none) return none;
  if (bytes[at] === byteOf.openAngle) return readAngled(bytes, at, frame);
  // With the interface in front, as nearly always, its name is no identifier: so it is looked for first.
  const behindWord = skipWord(bytes, at);
  const second = skipBlanks(bytes, behindWord);
  const withInterface = isBlank(bytes[behindWord]) ? readFromId(bytes, second, frame) : none;
  return withInterface === none ? readFromId(bytes, at, frame) : withInterface;
};

/** Whether a frame may end here: at the end of its line, or with more words after a blank. */
export const endsFrame = (byte: number | undefined): boolean => isLineEnd(byte) || isBlank(byte);
