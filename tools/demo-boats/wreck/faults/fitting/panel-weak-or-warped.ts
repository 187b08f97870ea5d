import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** A small panel of which the cut-out takes most. */
export const fittingPanelWeakOrWarped: Fault = {
  rule: 'fitting/panel-weak-or-warped',
  about: ['wide-screen', 'wide-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'wide-screen',
      name: 'screen nearly as large as its panel',
      place: 'stern-locker',
      opening: {
        panel: {
          material: 'grp',
          thicknessMm: 6,
          unevenMm: 3,
          edgesMm: { left: 43, right: 43, above: 40, below: 40 },
        },
      },
    }),
};
