import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** Letters of 3 mm, read from a metre and a half. */
export const fittingHardToRead: Fault = {
  rule: 'fitting/hard-to-read',
  about: ['far-screen', 'far-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'far-screen',
      name: 'screen far from the wheel',
      place: 'aft-cabin',
      sheet: { face: { letterMm: 3 } },
      opening: { viewed: { distanceM: 1.5 } },
    }),
};
