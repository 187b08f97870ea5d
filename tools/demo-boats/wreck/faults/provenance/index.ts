import type { Fault } from '../../fault.ts';
import { provenanceDialectNotConfirmed } from './dialect-not-confirmed.ts';
import { provenanceKeptCableUntested } from './kept-cable-untested.ts';
import { provenanceLengthGuessedAndBought } from './length-guessed-and-bought.ts';
import { provenanceLimitOverridden } from './limit-overridden.ts';
import { provenanceManualWithoutNote } from './manual-without-note.ts';
import { provenanceNeedsRestOnTypicalSheets } from './needs-rest-on-typical-sheets.ts';
import { provenancePictureNotThere } from './picture-not-there.ts';

/** The faults of this area, one a rule. */
export const provenanceFaults: readonly Fault[] = [
  provenanceDialectNotConfirmed,
  provenanceKeptCableUntested,
  provenanceLengthGuessedAndBought,
  provenanceLimitOverridden,
  provenanceManualWithoutNote,
  provenanceNeedsRestOnTypicalSheets,
  provenancePictureNotThere,
];
