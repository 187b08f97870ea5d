import type { RecordedFrame } from './recorded-frame.ts';

// Every step below takes the bytes and a position, fills the frame, and returns the position behind what it read,
// or `none`. A line ends with a line feed, which no step reads past. No strings are made: this is the hot path.

/** What a step returns when the text is not what it reads. */
export const none = -1;

const lineFeed = 10;
const carriageReturn = 13;
const tab = 9;
const space = 32;
const hash = 35;
const openRound = 40;
const closeRound = 41;
const point = 46;
const zero = 48;
const openAngle = 60;
const closeAngle = 62;
const capitalR = 82;
const openSquare = 91;
const closeSquare = 93;
const smallR = 114;
const smallX = 120;

const noDigit = 255;
const errorFlag = 0x2000_0000;
const largestId = 0x1fff_ffff;
const largestShortId = 0x7ff;

const digitOf = ((): Uint8Array => {
  const table = new Uint8Array(256).fill(noDigit);
  for (let digit = 0; digit < 10; digit += 1) table[zero + digit] = digit;
  for (let digit = 10; digit < 16; digit += 1) {
    table[0x41 + digit - 10] = digit;
    table[0x61 + digit - 10] = digit;
  }
  return table;
})();

const hexAt = (bytes: Uint8Array, at: number): number => digitOf[bytes[at] ?? 0] ?? noDigit;

const isBlank = (byte: number | undefined): boolean => byte === space || byte === tab;

/** Position of the first byte that is no space or tab. */
export const skipBlanks = (bytes: Uint8Array, from: number): number => {
  let at = from;
  while (isBlank(bytes[at])) at += 1;
  return at;
};

const skipWord = (bytes: Uint8Array, from: number): number => {
  let at = from;
  while ((bytes[at] ?? 0) > space) at += 1;
  return at;
};

/** `(seconds.fraction)`; without the round bracket the frame has no time. */
const readTime = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  frame.timeUs = undefined;
  if (bytes[from] !== openRound) return from;
  let at = from + 1;
  let seconds = 0;
  for (let digit = hexAt(bytes, at); digit < 10; digit = hexAt(bytes, at)) {
    seconds = seconds * 10 + digit;
    at += 1;
  }
  let fractionUs = 0;
  if (bytes[at] === point) {
    at += 1;
    let worthUs = 100_000;
    for (let digit = hexAt(bytes, at); digit < 10; digit = hexAt(bytes, at)) {
      fractionUs += digit * worthUs;
      worthUs = worthUs === 1 ? 0 : worthUs / 10;
      at += 1;
    }
  }
  if (bytes[at] !== closeRound || at - from < 2 || seconds > 1e10) return none;
  frame.timeUs = seconds * 1_000_000 + Math.floor(fractionUs);
  return skipBlanks(bytes, at + 1);
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
  frame.remote = bytes[from] === capitalR;
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
    at += bytes[at + 2] === point ? 3 : 2;
  }
  frame.length = count;
  return at;
};

/** What stands behind the identifier of the older forms: `[8]  00 FC …`, or `[8] remote request`. */
const readColumns = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  const length = hexAt(bytes, from + 1);
  if (bytes[from] !== openSquare || length > 8 || bytes[from + 2] !== closeSquare) return none;
  frame.length = length;
  let at = skipBlanks(bytes, from + 3);
  frame.remote = bytes[at] === smallR;
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
  if (bytes[from + 1] !== zero || bytes[from + 2] !== smallX) return none;
  const at = readId(bytes, from + 3, frame);
  return at === none || bytes[at] !== closeAngle ? none : readColumns(bytes, skipBlanks(bytes, at + 1), frame);
};

/** `ID#…` or `ID  [8] …`; anything else is not the identifier but the name of the interface. */
const readFromId = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  const at = readId(bytes, from, frame);
  if (at === none) return none;
  return bytes[at] === hash ? readPacked(bytes, at + 1, frame) : readColumns(bytes, skipBlanks(bytes, at), frame);
};

/** Reads one line of candump text in any of its forms, from its first byte that is no blank. */
export const readCandumpLine = (bytes: Uint8Array, from: number, frame: RecordedFrame): number => {
  const at = readTime(bytes, from, frame);
  if (at === none) return none;
  if (bytes[at] === openAngle) return readAngled(bytes, at, frame);
  // With the interface in front, as nearly always, its name is no identifier: so it is looked for first.
  const behindWord = skipWord(bytes, at);
  const second = skipBlanks(bytes, behindWord);
  const withInterface = isBlank(bytes[behindWord]) ? readFromId(bytes, second, frame) : none;
  return withInterface === none ? readFromId(bytes, at, frame) : withInterface;
};

/** Whether a line may end here: at its line feed, or with more words after a blank. */
export const endsFrame = (byte: number | undefined): boolean =>
  byte === lineFeed || byte === carriageReturn || isBlank(byte);

/** Whether the line is empty from here on. */
export const isLineEnd = (byte: number | undefined): boolean => byte === lineFeed || byte === carriageReturn;

/** Whether a line that begins with this byte is a comment. */
export const opensComment = (byte: number | undefined): boolean => byte === hash;
