import { buildCanId } from './can-id.ts';
import { endsFrame, readCandumpLine } from './candump-line.ts';
import { type CsvLine, emptyCsvLine, readCsvLine } from './csv-line.ts';
import { byteOf, isLineEnd, none, skipBlanks } from './line-bytes.ts';
import { extractOf, startTally } from './reader-tally.ts';
import { emptyFrame } from './recorded-frame.ts';
import type { LineReader } from './recording-reader-shape.ts';
import type { RecordingSink } from './recording-sink.ts';
import { readSentenceLine } from './sentence-line.ts';

/** A line cut by the edge of a piece is kept up to here; the rest of a longer one is dropped. */
export const longestKeptLine = 2048;

/**
 * Reads lines of a bus, of a file or as they come in: candump text in all its forms, `time,priority,PGN,…` and
 * sentences of NMEA 0183, in any mixture. Lines that are none of these are counted, and the next is read. A datagram
 * that may lack its line end is followed by one; empty lines are nothing.
 *
 * @example const reader = startLineReader({ onFrame, onSentence }); socket.on('data', reader.push)
 */
export const startLineReader = ({ onFrame, onMessage, onSentence }: RecordingSink): LineReader => {
  const frame = emptyFrame();
  const csv = emptyCsvLine();
  const tally = startTally();
  const kept = new Uint8Array(longestKeptLine + 1);
  let keptLength = 0;
  let linesRead = 0;

  const takeCsv = (line: CsvLine): void => {
    if (line.kind === 'recorder-note') {
      tally.recorderNotes += 1;
      return;
    }
    const { timeUs, priority, pgn, source, destination, length } = line;
    const data = line.bytes.subarray(0, length);
    if (line.kind === 'message') {
      tally.messages += 1;
      onMessage?.({ timeUs, priority, pgn, source, destination, data });
      return;
    }
    frame.timeUs = timeUs;
    frame.extended = true;
    frame.error = false;
    frame.remote = false;
    frame.length = length;
    frame.id = buildCanId({ priority, pgn, destination, source });
    frame.data.set(data);
    tally.frames += 1;
    onFrame?.(frame);
  };

  const takeSentences = (bytes: Uint8Array, from: number, end: number): boolean => {
    const found = readSentenceLine(bytes, { from, end });
    if (found === undefined) return false;
    tally.noiseBytes += found.noiseBytes;
    tally.sentences += found.sentences.length;
    if (onSentence !== undefined) for (const sentence of found.sentences) onSentence(sentence);
    return true;
  };

  /** Reads a line that is no frame of candump text. */
  const readOther = (bytes: Uint8Array, from: number, end: number): void => {
    if (isLineEnd(bytes[from])) return;
    if (bytes[from] === byteOf.hash) tally.comments += 1;
    else if (readCsvLine(bytes, from, csv) !== none) takeCsv(csv);
    else if (!takeSentences(bytes, from, end)) {
      const line = bytes.subarray(from, bytes[end - 1] === byteOf.carriageReturn ? end - 1 : end);
      tally.noiseBytes += line.length;
      tally.broken(tally.wantsPlace() ? { line: linesRead, says: extractOf(line) } : { says: '' });
    }
  };

  /** Reads whole lines; the last byte before `to` is a line feed. */
  const readLines = (bytes: Uint8Array, { from, to }: { from: number; to: number }): void => {
    let at = from;
    while (at < to) {
      linesRead += 1;
      const start = skipBlanks(bytes, at);
      const end = readCandumpLine(bytes, start, frame);
      if (end !== none && endsFrame(bytes[end])) {
        tally.frames += 1;
        onFrame?.(frame);
        at = (bytes[end] === byteOf.lineFeed ? end : bytes.indexOf(byteOf.lineFeed, end)) + 1;
      } else {
        const feed = bytes.indexOf(byteOf.lineFeed, start);
        readOther(bytes, start, feed);
        at = feed + 1;
      }
    }
  };

  const keep = (bytes: Uint8Array): void => {
    const part = bytes.subarray(0, longestKeptLine - keptLength);
    kept.set(part, keptLength);
    keptLength += part.length;
    tally.noiseBytes += bytes.length - part.length;
  };

  const readKept = (): void => {
    kept[keptLength] = byteOf.lineFeed;
    readLines(kept, { from: 0, to: keptLength + 1 });
    keptLength = 0;
  };

  return {
    push(chunk) {
      const firstFeed = chunk.indexOf(byteOf.lineFeed);
      if (firstFeed < 0) {
        keep(chunk);
        return;
      }
      let from = 0;
      if (keptLength > 0) {
        keep(chunk.subarray(0, firstFeed));
        readKept();
        from = firstFeed + 1;
      }
      const to = chunk.lastIndexOf(byteOf.lineFeed) + 1;
      readLines(chunk, { from, to });
      keep(chunk.subarray(to));
    },
    soFar: () => tally.counts({ cutShort: false }),
    end() {
      if (keptLength > 0) readKept();
      return tally.counts({ cutShort: false });
    },
  };
};
