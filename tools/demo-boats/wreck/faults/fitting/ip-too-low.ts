import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** An indoor display where spray comes. */
export const fittingIpTooLow: Fault = {
  rule: 'fitting/ip-too-low',
  about: ['indoor-screen', 'indoor-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'indoor-screen',
      name: 'screen made for a cabin',
      place: 'cockpit',
      sheet: { ipCode: 'IP54' },
    }),
};
