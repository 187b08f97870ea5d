import { readingsOf } from '../../facts/message-readings.ts';
import { pgnInfo } from '../../facts/pgns.ts';
import { readingWords } from '../../facts/reading-words.ts';

/** A message in words: `heading (127250)`, `heading (HDG)`. */
export const messageWords = (message: number | string): string => {
  const said = typeof message === 'number' ? { pgn: message } : { sentence: message };
  const [first] = readingsOf(said).filter(({ ifSaid }) => ifSaid !== true);
  if (first !== undefined) return `${readingWords[first.reading]} (${message})`;
  const name = typeof message === 'number' ? pgnInfo(message)?.name : undefined;
  return name === undefined ? `message ${message}` : `${name} (${message})`;
};
