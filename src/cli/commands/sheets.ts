import type { Sheet } from '../../core/boat/sheet.ts';
import { findSheets } from '../../core/facts/sheets/find-sheets.ts';
import { typicalSheets } from '../../core/facts/sheets/index.ts';
import { sheetReadings } from '../../core/readings/sheet-readings.ts';
import { sheetsText } from '../../papers/lists/sheets-text.ts';
import { ownSheetsIn } from '../own-sheets.ts';

const summary = (sheet: Sheet): object => ({
  id: sheet.id,
  name: sheet.name,
  kind: sheet.kind,
  ...sheetReadings(sheet),
});

/**
 * `fairlead sheets [words…]`: sheets that answer to all the words, best first, or all; own ones before typical ones. Exit
 * code 1 when none does.
 */
export const sheets = async (
  words: readonly string[],
  { json = false, boats = 'boats' }: { json?: boolean; boats?: string },
): Promise<void> => {
  const own = await ownSheetsIn(boats);
  const found =
    words.length === 0 ? [...own, ...typicalSheets] : findSheets(words.join(' '), own).map(({ sheet }) => sheet);
  process.stdout.write(json ? `${JSON.stringify(found.map(summary), undefined, 2)}\n` : sheetsText(found));
  if (found.length === 0) process.exitCode = 1;
};
