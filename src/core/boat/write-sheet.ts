import { canonicalSheet } from './canonical-sheet.ts';
import type { Sheet } from './sheet.ts';

/** The text of a file that holds one sheet, to be kept for another boat; `readSheet` gives the sheet back. */
export const writeSheet = (sheet: Sheet): string =>
  `${JSON.stringify({ format: 'fairlead-sheet', version: 1, sheet: canonicalSheet(sheet) }, null, 2)}\n`;
