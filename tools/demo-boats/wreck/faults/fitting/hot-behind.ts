import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** A screen in a shut box hardly larger than itself, with no air beside it. */
export const fittingHotBehind: Fault = {
  rule: 'fitting/hot-behind',
  about: ['boxed-screen', 'boxed-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'boxed-screen',
      name: 'screen in a shut box',
      place: 'aft-cabin',
      opening: { behind: { depthMm: 200, how: 'taped', widthMm: 260, heightMm: 170, air: 'closed' } },
    }),
};
