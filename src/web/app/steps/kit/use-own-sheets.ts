import type { Sheet } from '../../../../core/boat/sheet.ts';

const none: readonly Sheet[] = [];

/** Sheets that were kept from other boats. */
export const useOwnSheets = (): readonly Sheet[] => none;
