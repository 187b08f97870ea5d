import { endsFrame, isLineEnd, none, opensComment, readCandumpLine, skipBlanks } from './candump-line.ts';
import { emptyFrame, type RecordedFrame, type RecordingReader } from './recorded-frame.ts';

const lineFeed = 10;
/** A line cut by the edge of a piece is kept up to here; no frame needs a tenth of it. */
const longestKeptLine = 2048;

/**
 * Reads candump text: `(time) can0 ID#DATA` with or without time and interface, `<0x18eeff01> [8] 05 a0 …` and
 * `can0  09F8027F   [8]  00 FC …`. Lines that are no frame are counted, never fatal.
 */
export const startCandumpReader = (onFrame: (frame: RecordedFrame) => void): RecordingReader => {
  const frame = emptyFrame();
  const tally = { frames: 0, comments: 0, broken: 0 };
  const kept = new Uint8Array(longestKeptLine + 1);
  let keptLength = 0;

  const readOther = (bytes: Uint8Array, at: number): void => {
    if (opensComment(bytes[at])) tally.comments += 1;
    else if (!isLineEnd(bytes[at])) tally.broken += 1;
  };

  /** Reads whole lines; the last byte before `to` is a line feed. */
  const readLines = (bytes: Uint8Array, { from, to }: { from: number; to: number }): void => {
    let at = from;
    while (at < to) {
      const start = skipBlanks(bytes, at);
      let end = readCandumpLine(bytes, start, frame);
      if (end !== none && endsFrame(bytes[end])) {
        tally.frames += 1;
        onFrame(frame);
      } else {
        readOther(bytes, start);
        end = start;
      }
      at = (bytes[end] === lineFeed ? end : bytes.indexOf(lineFeed, end)) + 1;
    }
  };

  const keep = (bytes: Uint8Array): void => {
    const part = bytes.subarray(0, longestKeptLine - keptLength);
    kept.set(part, keptLength);
    keptLength += part.length;
  };

  const readKept = (): void => {
    kept[keptLength] = lineFeed;
    readLines(kept, { from: 0, to: keptLength + 1 });
    keptLength = 0;
  };

  return {
    push(chunk) {
      const firstFeed = chunk.indexOf(lineFeed);
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
      const to = chunk.lastIndexOf(lineFeed) + 1;
      readLines(chunk, { from, to });
      keep(chunk.subarray(to));
    },
    end() {
      if (keptLength > 0) readKept();
      return { ...tally, cutShort: false };
    },
  };
};
