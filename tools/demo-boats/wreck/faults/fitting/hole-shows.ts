import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** Old hole 300 x 200, new bezel 290 x 180. */
export const fittingHoleShows: Fault = {
  rule: 'fitting/hole-shows',
  about: ['small-screen', 'small-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'small-screen',
      name: 'screen that is smaller than its hole',
      place: 'stern-locker',
      sheet: { body: { widthMm: 290, heightMm: 180, depthMm: 60 }, cutout: { widthMm: 262, heightMm: 160 } },
      opening: { hole: { shape: 'rectangle', widthMm: 300, heightMm: 200 } },
    }),
};
