import type { Rule } from '../rule.ts';
import { dialectNotConfirmed } from './dialect-not-confirmed.ts';
import { keptCableUntested } from './kept-cable-untested.ts';
import { lengthGuessedAndBought } from './length-guessed-and-bought.ts';
import { limitOverridden } from './limit-overridden.ts';
import { manualWithoutNote } from './manual-without-note.ts';
import { needsRestOnTypicalSheets } from './needs-rest-on-typical-sheets.ts';
import { pictureNotThere } from './picture-not-there.ts';

/** The rules of this area. */
export const provenanceRules: readonly Rule[] = [
  dialectNotConfirmed,
  keptCableUntested,
  lengthGuessedAndBought,
  limitOverridden,
  manualWithoutNote,
  needsRestOnTypicalSheets,
  pictureNotThere,
];
