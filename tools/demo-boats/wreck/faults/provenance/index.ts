import type { Fault } from '../../fault.ts';
import { provenanceManualWithoutNote } from './manual-without-note.ts';
import { provenanceNeedsRestOnTypicalSheets } from './needs-rest-on-typical-sheets.ts';

/** The faults of this area, one a rule. */
export const provenanceFaults: readonly Fault[] = [provenanceManualWithoutNote, provenanceNeedsRestOnTypicalSheets];
