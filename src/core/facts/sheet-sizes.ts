/** Sheets of paper as they lie, longer side across, millimetres. */
export const sheetSizes = {
  a4: { words: 'A4', widthMm: 297, heightMm: 210, source: 'iso-216' },
  a3: { words: 'A3', widthMm: 420, heightMm: 297, source: 'iso-216' },
  letter: { words: 'US Letter', widthMm: 279.4, heightMm: 215.9, source: 'ansi-y14.1' },
  tabloid: { words: 'Tabloid', widthMm: 431.8, heightMm: 279.4, source: 'ansi-y14.1' },
} as const;

export type SheetName = keyof typeof sheetSizes;

/** White between the edge of a sheet and its frame: where it is bound or punched, and on the other three sides. */
export const sheetBorders = { boundMm: 20, otherMm: 10, source: 'iso-5457' } as const;
