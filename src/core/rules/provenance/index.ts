import type { Rule } from '../rule.ts';
import { manualWithoutNote } from './manual-without-note.ts';
import { needsRestOnTypicalSheets } from './needs-rest-on-typical-sheets.ts';

/** The rules of this area. */
export const provenanceRules: readonly Rule[] = [manualWithoutNote, needsRestOnTypicalSheets];
