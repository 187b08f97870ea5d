import type { Sheet } from '../../core/boat/sheet.ts';
import { findSheets } from '../../core/facts/sheets/find-sheets.ts';
import { typicalSheets } from '../../core/facts/sheets/index.ts';
import { sheetReadings } from '../../core/readings/sheet-readings.ts';
import { sheetsText } from '../../papers/lists/sheets-text.ts';

const summary = (sheet: Sheet): object => ({
  id: sheet.id,
  name: sheet.name,
  kind: sheet.kind,
  ...sheetReadings(sheet),
});

/** `fairlead sheets [words…]`: typical sheets that answer to all the words, best first, or all; exit code 1 when none does. */
export const sheets = (words: readonly string[], { json = false }: { json?: boolean }): void => {
  const found = words.length === 0 ? typicalSheets : findSheets(words.join(' ')).map(({ sheet }) => sheet);
  process.stdout.write(json ? `${JSON.stringify(found.map(summary), undefined, 2)}\n` : sheetsText(found));
  if (found.length === 0) process.exitCode = 1;
};
