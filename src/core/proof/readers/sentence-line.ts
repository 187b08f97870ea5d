import { byteOf, hexAt, isBlank, none, skipBlanks } from './line-bytes.ts';
import type { RecordedSentence } from './recording-sink.ts';
import { readTagBlock } from './tag-block.ts';
import { readBracketedTime, readStamp, type Stamped } from './time-stamp.ts';

const endChars = '\r\n'.length;
/** Talker and formatter, or what a maker puts there: at least three capital letters or digits. */
const shortestAddress = 3;

/** What a line of sentences came to. */
export interface SentenceLine {
  readonly sentences: readonly RecordedSentence[];
  /** bytes that are part of no sentence, nor of a stamp */
  readonly noiseBytes: number;
}

const isStart = (byte: number | undefined): boolean => byte === byteOf.dollar || byte === byteOf.exclamation;

/** Position of the next start character before `end`, or `end`. */
const nextStart = (bytes: Uint8Array, from: number, end: number): number => {
  let at = from;
  while (at < end && !isStart(bytes[at])) at += 1;
  return at;
};

const isPlain = (byte: number): boolean => byte >= byteOf.space && byte < 0x7f;

const isAddressChar = (byte: number | undefined): boolean =>
  byte !== undefined && ((byte >= 0x41 && byte <= 0x5a) || (byte >= byteOf.zero && byte < byteOf.colon));

const hasAddress = (bytes: Uint8Array, from: number, end: number): boolean => {
  let at = from + 1;
  while (at < end && isAddressChar(bytes[at])) at += 1;
  return at < end && at - from > shortestAddress && (bytes[at] === byteOf.comma || bytes[at] === byteOf.star);
};

interface Span {
  readonly from: number;
  readonly end: number;
}

const textOf = (bytes: Uint8Array, { from, end }: Span): string => {
  let text = '';
  for (let at = from; at < end; at += 1) text += String.fromCharCode(bytes[at] ?? 0);
  return text;
};

/** Looks at one sentence from its start character to its end; undefined when it cannot be one. */
const checksumOf = (bytes: Uint8Array, { from, end }: Span): RecordedSentence['checksum'] | undefined => {
  if (!hasAddress(bytes, from, end)) return undefined;
  let sum = 0;
  let plain = true;
  let at = from + 1;
  for (; at < end && bytes[at] !== byteOf.star; at += 1) {
    const byte = bytes[at] ?? 0;
    sum ^= byte;
    plain = plain && isPlain(byte);
  }
  if (at === end) return plain ? 'absent' : undefined;
  const high = hexAt(bytes, at + 1);
  const low = hexAt(bytes, at + 2);
  if (at + 3 !== end || (high | low) > 15) return undefined;
  if (high * 16 + low === sum) return 'right';
  return plain ? 'wrong' : undefined;
};

/** End of the text of a span: blanks and carriage returns behind it are no part of it. */
const trimmedEnd = (bytes: Uint8Array, { from, end }: Span): number => {
  let at = end;
  while (at > from && (isBlank(bytes[at - 1]) || bytes[at - 1] === byteOf.carriageReturn)) at -= 1;
  return at;
};

const wordBytes = (bytes: Uint8Array, { from, end }: Span): number => {
  let count = 0;
  for (let at = from; at < end; at += 1) if (!isBlank(bytes[at])) count += 1;
  return count;
};

interface Front extends Stamped {
  from?: string;
  noiseBytes: number;
}

const readFrontTime = (bytes: Uint8Array, from: number, into: Stamped): number =>
  bytes[from] === byteOf.openRound ? readBracketedTime(bytes, from, into) : readStamp(bytes, from, into);

/** What stands in front of the first sentence: a stamp, a tag block, a word between, or noise. */
const readFront = (bytes: Uint8Array, { from, end }: Span): Front => {
  const front: Front = { timeUs: undefined, noiseBytes: 0 };
  let at = skipBlanks(bytes, from);
  const behindTime = at < end ? readFrontTime(bytes, at, front) : none;
  if (behindTime === none || behindTime > end) front.timeUs = undefined;
  else at = behindTime;
  const isStamped = front.timeUs !== undefined;
  const tags = bytes.subarray(at, end).indexOf(byteOf.backslash);
  const block = tags < 0 ? undefined : readTagBlock(bytes.subarray(at + tags, end));
  if (block !== undefined) {
    front.timeUs = block.timeUs ?? front.timeUs;
    if (block.from !== undefined) front.from = block.from;
  } else if (!isStamped) front.noiseBytes = wordBytes(bytes, { from: at, end });
  return front;
};

/**
 * Reads the sentences of one line, `end` being its line feed. The line may begin with a stamp – seconds since 1970, a
 * date with a clock, either of them in brackets, a tag block – and may hold the wreck of a sentence in front of a whole
 * one. Undefined when there is no sentence in it.
 */
export const readSentenceLine = (bytes: Uint8Array, line: Span): SentenceLine | undefined => {
  const first = nextStart(bytes, line.from, line.end);
  if (first === line.end) return undefined;
  const front = readFront(bytes, { from: line.from, end: first });
  const sentences: RecordedSentence[] = [];
  let { noiseBytes } = front;
  for (let from = first; from < line.end; ) {
    const next = nextStart(bytes, from + 1, line.end);
    const span = { from, end: trimmedEnd(bytes, { from, end: next }) };
    const checksum = checksumOf(bytes, span);
    // In front of another sentence only a whole one counts: anything else is one that was cut off.
    if (checksum === undefined || (next < line.end && checksum !== 'right')) noiseBytes += span.end - span.from;
    else {
      const text = textOf(bytes, span);
      const tagged = front.from === undefined ? {} : { from: front.from };
      sentences.push({ timeUs: front.timeUs, text, checksum, chars: text.length + endChars, ...tagged });
    }
    from = next;
  }
  return sentences.length === 0 ? undefined : { sentences, noiseBytes };
};
