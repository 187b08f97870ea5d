import type { Fault } from '../../fault.ts';

/** Nobody has read the manual of the position antenna that every screen relies on. */
export const provenanceNeedsRestOnTypicalSheets: Fault = {
  rule: 'provenance/needs-rest-on-typical-sheets',
  about: [],
  plant: (boat) => ({
    ...boat,
    sheets: boat.sheets.map((sheet) => {
      if (sheet.id !== 'gnss-antenna-bus') return sheet;
      const { sourceNote: _, ...rest } = sheet;
      return { ...rest, source: 'typical' };
    }),
  }),
};
