import type { PastedLine, PastedMessage, PastedWay } from '../../core/pasted/pasted-shape.ts';
import { everyWords } from '../cards/form-words.ts';
import { messageWords } from './message-words.ts';

/** One line of pasted text, with what was understood of it. */
export interface PastedRow {
  readonly number: number;
  readonly text: string;
  readonly understood: readonly string[];
  readonly doubts: readonly string[];
  readonly whyNot?: string;
}

const wayWords: Readonly<Record<PastedWay, string>> = { sends: 'sent', hears: 'heard', both: 'sent and heard' };

const wordsOf = (message: PastedMessage): string =>
  [
    messageWords({
      ...(message.pgn === undefined ? {} : { pgn: message.pgn }),
      ...(message.sentence === undefined ? {} : { sentence: message.sentence }),
    }),
    ...(message.way === undefined ? [] : [wayWords[message.way]]),
    ...(message.everyMs === undefined ? [] : [everyWords(message.everyMs)]),
  ].join(', ');

/** Pasted text line by line in words; lines of words alone, which say nothing of a message, are left out. */
export const pastedRows = (lines: readonly PastedLine[]): readonly PastedRow[] =>
  lines
    .filter(({ found, whyNot }) => found.length > 0 || whyNot !== undefined)
    .map(({ number, text, found, whyNot }) => ({
      number,
      text: text.trim(),
      understood: found.map(wordsOf),
      doubts: found.flatMap(({ doubt }) => doubt ?? []),
      ...(whyNot === undefined ? {} : { whyNot }),
    }));
