import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** Cutting asked for from a typical sheet. */
export const fittingCutFromTypical: Fault = {
  rule: 'fitting/cut-from-typical',
  about: ['unread-screen', 'unread-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'unread-screen',
      name: 'screen whose drawing nobody has read',
      place: 'stern-locker',
      sheet: { source: 'typical' },
      opening: { toCut: true },
    }),
};
