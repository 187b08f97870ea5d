import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** A web of 12 mm between two cut-outs in a panel of 10 mm. */
export const fittingWebTooNarrow: Fault = {
  rule: 'fitting/web-too-narrow',
  about: ['left-screen-hole', 'hole-beside'],
  plant: (boat) => {
    const holed = withHoledPanel(boat, {
      id: 'left-screen',
      name: 'screen beside another hole',
      place: 'aft-cabin',
      opening: { atMm: [0, 0], panel: { material: 'grp', thicknessMm: 10 } },
    });
    return {
      ...holed,
      openings: [
        ...(holed.openings ?? []),
        {
          id: 'hole-beside',
          name: 'hole of the old gauge',
          place: 'aft-cabin',
          hole: { shape: 'round', widthMm: 80, heightMm: 80 },
          atMm: [112.5 + 12 + 40, 0],
          panel: { material: 'grp', thicknessMm: 10 },
          how: 'taped',
        },
      ],
    };
  },
};
