import type { Protocol, Sheet } from '../../core/boat/sheet.ts';
import type { ReadingId } from '../../core/facts/reading-ids.ts';
import { readingWords } from '../../core/facts/reading-words.ts';
import { sheetReadings } from '../../core/readings/sheet-readings.ts';
import { languageWords } from '../cards/language-words.ts';

/** So many readings are named; the others are counted. */
const named = 3;

const readingsWords = (readings: readonly ReadingId[]): string => {
  const words = readings.map((reading) => readingWords[reading]);
  const left = words.length - named;
  // "and one more" is no shorter than its name
  if (left <= 1) return words.join(', ');
  return `${words.slice(0, named).join(', ')} and ${left} more`;
};

const languagesOf = ({ ports }: Sheet): string => {
  const spoken = new Set(ports.map(({ protocol }) => protocol).filter((one): one is Protocol => one !== 'dc'));
  return [...spoken].map((protocol) => languageWords[protocol]).join(', ');
};

/**
 * What a unit of a sheet says and hears, and by what, in one line.
 *
 * @example sheetLine(heading) // 'says heading, rate of turn, attitude; hears variation; by NMEA 2000'
 */
export const sheetLine = (sheet: Sheet): string => {
  const { says, hears } = sheetReadings(sheet);
  const languages = languagesOf(sheet);
  const parts = [
    ...(says.length === 0 ? [] : [`says ${readingsWords(says)}`]),
    ...(hears.length === 0 ? [] : [`hears ${readingsWords(hears)}`]),
    ...(languages === '' ? [] : [`by ${languages}`]),
  ];
  return parts.length === 0 ? 'joined to nothing' : parts.join('; ');
};
