import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** A cut-out that leaves 8 mm of dash above it. */
export const fittingEdgeTooNear: Fault = {
  rule: 'fitting/edge-too-near',
  about: ['high-screen', 'high-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'high-screen',
      name: 'screen under the edge of the dash',
      place: 'aft-cabin',
      opening: { panel: { material: 'grp', thicknessMm: 6, edgesMm: { above: 18, below: 20 } } },
    }),
};
