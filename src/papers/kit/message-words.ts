import type { Hears, Sends } from '../../core/boat/sheet.ts';
import { readingsOf } from '../../core/facts/message-readings.ts';
import { readingWords } from '../../core/facts/reading-words.ts';
import { messageCode, messageName } from '../cards/form-words.ts';

/**
 * A message of a sheet in words, with what it tells of.
 *
 * @example messageWords({ pgn: 128267 }) // 'PGN 128267 Water Depth: depth'
 */
export const messageWords = (message: Pick<Sends & Hears, 'pgn' | 'sentence' | 'reading'>): string => {
  if (message.reading !== undefined) return readingWords[message.reading];
  const readings = readingsOf(message).map(({ reading }) => readingWords[reading]);
  const name = [messageCode(message), messageName(message)].filter((part) => part !== undefined).join(' ');
  return readings.length === 0 ? name : `${name}: ${readings.join(', ')}`;
};
