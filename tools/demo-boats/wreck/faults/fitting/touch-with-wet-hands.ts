import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** Touch only, in gloves. */
export const fittingTouchWithWetHands: Fault = {
  rule: 'fitting/touch-with-wet-hands',
  about: ['touch-screen', 'touch-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'touch-screen',
      name: 'screen worked by touch',
      place: 'stern-locker',
      sheet: { face: { worked: 'touch' } },
      opening: { viewed: { distanceM: 0.8, gloves: true } },
    }),
};
