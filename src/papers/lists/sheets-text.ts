import type { Sheet } from '../../core/boat/sheet.ts';
import type { ReadingId } from '../../core/facts/reading-ids.ts';
import { readingWords } from '../../core/facts/reading-words.ts';
import { sheetReadings } from '../../core/readings/sheet-readings.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { printCount } from './print-figure.ts';

const width = 80;

const wordsFor = (readings: readonly ReadingId[]): string =>
  readings.length === 0 ? 'nothing' : readings.map((reading) => readingWords[reading]).join(', ');

const sheetLines = (sheet: Sheet): string[] => {
  const { says, hears } = sheetReadings(sheet);
  return [
    sheet.id,
    ...textLines(sheet.name, { width, lead: '  ' }),
    ...textLines(wordsFor(says), { width, lead: '  says   ' }),
    ...textLines(wordsFor(hears), { width, lead: '  hears  ' }),
    '',
  ];
};

const countWords = (sheets: readonly Sheet[]): string => {
  const own = sheets.filter(({ source }) => source !== 'typical').length;
  const typical = `${printCount(sheets.length - own, 'typical sheet')}. The maker’s own sheet of a unit wins.`;
  return own === 0 ? typical : `${printCount(own, 'own sheet')}, ${typical}`;
};

/** Sheets in the order given as text of 80 columns: id, name, and the readings each says and hears in words. */
export const sheetsText = (sheets: readonly Sheet[]): string =>
  sheets.length === 0
    ? 'No sheet answers to all of these words. Use fewer, or none for the whole list.\n'
    : `${[...sheets.flatMap(sheetLines), ...textLines(countWords(sheets), { width, lead: '' })].join('\n')}\n`;
