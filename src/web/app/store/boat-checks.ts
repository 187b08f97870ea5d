import { config } from 'zod';
import { textHash } from '../../workers/text-hash.ts';

// the page forbids code made from text; without this zod would try it and the browser would log a refusal
config({ jitless: true });

export { listLine } from '../../../core/boat/list-line.ts';
export { readBoat } from '../../../core/boat/read-boat.ts';
export { readSheet } from '../../../core/boat/read-sheet.ts';
export { writeSheet } from '../../../core/boat/write-sheet.ts';
export { addedLines } from '../../../core/log/added-lines.ts';
export { checkEntries } from '../../../core/log/check-entries.ts';
export { bytesHash } from '../../workers/text-hash.ts';

/** The tag of what a boat holds. */
export const tagOf = (text: string): string => `"${textHash(text)}"`;
