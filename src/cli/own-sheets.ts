import { join } from 'node:path';
import type { Sheet } from '../core/boat/sheet.ts';
import { ownSheets } from '../node/boat-folder.ts';
import { sheetFolder } from '../node/sheet-folder.ts';

/** The sheets somebody keeps beside the boats of a folder. */
export const ownSheetsIn = (boats: string): Promise<readonly Sheet[]> => sheetFolder(join(boats, ownSheets)).list();
