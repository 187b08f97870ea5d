import { readSentence } from '../decode/sentence.ts';
import { endsFrame, readCandumpLine } from '../readers/candump-line.ts';
import { none, skipBlanks } from '../readers/line-bytes.ts';
import { emptyFrame, type RecordedFrame } from '../readers/recorded-frame.ts';

/** One sentence of NMEA 0183 as it came. */
export interface LiveSentence {
  /** microseconds since 1970 by the stamp in front of it; undefined when none stands there */
  readonly timeUs: number | undefined;
  /** from its start character to the last one before the line end */
  readonly text: string;
  /** a wrong one is dropped and counted; an absent one proves nothing, and old talkers send none */
  readonly checksum: 'right' | 'wrong' | 'absent';
}

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
  readonly onSentence?: (sentence: LiveSentence) => void;
  readonly onLine?: (line: LiveLine) => void;
}

/** Cuts what comes in into lines and reads them. */
export interface LiveLines {
  /** Reads on; pieces may be cut anywhere. */
  push(bytes: Uint8Array): void;
  /** Reads a last line that has no end. */
  end(): void;
}

const lineFeed = 10;
const hash = 35;
/** No line of the bus or of a talker is a tenth as long; without an end by here it is noise. */
const longestLine = 2048;

/** A sentence begins with its last start character: what stands before it on the line is the rest of one cut off. */
const sentenceStart = /[$!][A-Z][A-Z0-9]{2,}[^$!]*$/;
const stamp = /^\s*\((\d{1,10})(?:\.(\d{1,6})\d*)?\)/;

const stampUs = (text: string): number | undefined => {
  const [, seconds, fraction = ''] = stamp.exec(text) ?? [];
  return seconds === undefined ? undefined : Number(seconds) * 1_000_000 + Number(fraction.padEnd(6, '0'));
};

const textOf = (line: Uint8Array): string => {
  let text = '';
  for (const byte of line) text += String.fromCharCode(byte);
  return text.replace(/\r?\n?$/, '');
};

const isPrintable = (text: string): boolean => /^[\t -~]*$/.test(text);

const sentenceIn = (text: string): LiveSentence | undefined => {
  const [found] = sentenceStart.exec(text) ?? [];
  if (found === undefined) return undefined;
  const read = readSentence(found.trimEnd());
  if (read === undefined || !isPrintable(read.body)) return undefined;
  return { timeUs: stampUs(text), text: found.trimEnd(), checksum: read.checksum };
};

/** Starts cutting a stream of bytes into frames and sentences; the frame handed out is one and the same each time. */
export const startLiveLines = ({ onFrame, onSentence, onLine }: LiveSink): LiveLines => {
  const frame = emptyFrame();
  const kept = new Uint8Array(longestLine + 1);
  let length = 0;
  /** bytes of a line that was too long, thrown away until it ends */
  let lost = 0;

  const kindOf = (start: number, text: string): LiveLine['kind'] => {
    if (kept[start] === hash) return 'comment';
    const end = readCandumpLine(kept, start, frame);
    if (end !== none && endsFrame(kept[end])) {
      onFrame?.(frame);
      return 'whole';
    }
    const sentence = sentenceIn(text);
    if (sentence === undefined) return 'noise';
    onSentence?.(sentence);
    return sentence.checksum === 'wrong' ? 'damaged' : 'whole';
  };

  const read = (): void => {
    const bytes = length + lost;
    const isTooLong = lost > 0;
    const text = isTooLong ? '' : textOf(kept.subarray(0, length));
    if (!isTooLong && kept[length - 1] !== lineFeed) kept[length] = lineFeed;
    length = 0;
    lost = 0;
    if (!isTooLong && text.trim() === '') return;
    const kind = isTooLong ? 'noise' : kindOf(skipBlanks(kept, 0), text);
    onLine?.({ kind, text: kind === 'noise' ? '' : text, bytes });
  };

  return {
    push(bytes) {
      for (const byte of bytes) {
        if (length === longestLine) {
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
  };
};
