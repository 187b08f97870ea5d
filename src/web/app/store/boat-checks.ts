import { config } from 'zod';

// the page forbids code made from text; without this zod would try it and the browser would log a refusal
config({ jitless: true });

export { listLine } from '../../../core/boat/list-line.ts';
export { readBoat } from '../../../core/boat/read-boat.ts';
export { readSheet } from '../../../core/boat/read-sheet.ts';
export { writeSheet } from '../../../core/boat/write-sheet.ts';
export { addedLines } from '../../../core/log/added-lines.ts';
export { checkEntries } from '../../../core/log/check-entries.ts';
