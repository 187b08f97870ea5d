import type { Sheet } from '../../../../../src/core/boat/sheet.ts';
import type { Fault } from '../../fault.ts';

const withoutNote = ({ sourceNote: _sourceNote, ...sheet }: Sheet): Sheet => sheet;

/** The radio's sheet says it is from the manual, but not from which page. */
export const provenanceManualWithoutNote: Fault = {
  rule: 'provenance/manual-without-note',
  about: ['radio-by-manual'],
  plant: (boat) => ({
    ...boat,
    sheets: boat.sheets.map((sheet) => (sheet.id === 'radio-by-manual' ? withoutNote(sheet) : sheet)),
  }),
};
