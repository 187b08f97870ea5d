import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** A sheet with a body and no cut-out. */
export const fittingSizesNotKnown: Fault = {
  rule: 'fitting/sizes-not-known',
  about: ['unknown-screen', 'unknown-screen-hole'],
  plant: (boat) => {
    const holed = withHoledPanel(boat, { id: 'unknown-screen', name: 'screen of no known size', place: 'aft-cabin' });
    return {
      ...holed,
      sheets: holed.sheets.map((sheet) => {
        if (sheet.id !== 'unknown-screen-sheet') return sheet;
        const { cutout: _, ...known } = sheet;
        return known;
      }),
    };
  },
};
