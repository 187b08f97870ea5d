import { longestKeptLine, startLineReader } from '../readers/line-reader.ts';
import type { RecordedFrame } from '../readers/recorded-frame.ts';
import type { RecordedSentence } from '../readers/recording-sink.ts';

/** One line of a live source, as it came in. */
export interface LiveLine {
  /** without its end */
  readonly text: string;
  /** bytes of the line with its end */
  readonly bytes: number;
  /** `whole` lines were understood; of `noise` nothing is kept */
  readonly kind: 'whole' | 'damaged' | 'comment' | 'noise';
}

/** Takes what the lines hold; each line is told after what stood on it. */
export interface LiveSink {
  readonly onFrame?: (frame: RecordedFrame) => void;
  readonly onSentence?: (sentence: RecordedSentence) => void;
  readonly onLine?: (line: LiveLine) => void;
}

/** Cuts what comes in into lines and reads them. */
export interface LiveLines {
  /** Reads on; pieces may be cut anywhere. */
  push(bytes: Uint8Array): void;
  /** Reads a last line that has no end. */
  end(): void;
  /** Throws a line away that has no end: the link broke in it, and what comes next is no part of it. */
  cut(): void;
}

const lineFeed = 10;

const textOf = (line: Uint8Array): string => {
  let text = '';
  for (const byte of line) text += String.fromCharCode(byte);
  return text.replace(/\r?\n?$/, '');
};

/** Starts cutting a stream of bytes into frames and sentences; the frame handed out is one and the same each time. */
export const startLiveLines = ({ onFrame, onSentence, onLine }: LiveSink): LiveLines => {
  const kept = new Uint8Array(longestKeptLine + 1);
  let length = 0;
  /** bytes of a line that was too long, thrown away until it ends */
  let lost = 0;
  let understood = 0;
  let damaged = 0;

  const reader = startLineReader({
    onFrame: (frame) => {
      understood += 1;
      onFrame?.(frame);
    },
    onMessage: () => {
      understood += 1;
    },
    onSentence: (sentence) => {
      if (sentence.checksum === 'wrong') damaged += 1;
      else understood += 1;
      onSentence?.(sentence);
    },
  });

  const kindOf = (line: Uint8Array, text: string): LiveLine['kind'] => {
    understood = 0;
    damaged = 0;
    reader.push(line);
    if (understood > 0) return 'whole';
    if (damaged > 0) return 'damaged';
    return text.trimStart().startsWith('#') ? 'comment' : 'noise';
  };

  const read = (): void => {
    const bytes = length + lost;
    const isTooLong = lost > 0;
    if (kept[length - 1] !== lineFeed) {
      kept[length] = lineFeed;
      length += 1;
    }
    const line = kept.subarray(0, length);
    const text = isTooLong ? '' : textOf(line);
    length = 0;
    lost = 0;
    if (!isTooLong && text.trim() === '') return;
    const kind = isTooLong ? 'noise' : kindOf(line, text);
    onLine?.({ kind, text: kind === 'noise' ? '' : text, bytes });
  };

  return {
    push(bytes) {
      for (const byte of bytes) {
        if (length === longestKeptLine) {
          lost += length;
          length = 0;
        }
        kept[length] = byte;
        length += 1;
        if (byte === lineFeed) read();
      }
    },
    end() {
      if (length + lost > 0) read();
    },
    cut() {
      const bytes = length + lost;
      length = 0;
      lost = 0;
      if (bytes > 0) onLine?.({ kind: 'noise', text: '', bytes });
    },
  };
};
