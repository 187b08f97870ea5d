import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** A screen level with the eye, and out of reach. */
export const fittingBadlySeenOrReached: Fault = {
  rule: 'fitting/badly-seen-or-reached',
  about: ['overhead-screen', 'overhead-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'overhead-screen',
      name: 'screen over the windscreen',
      place: 'stern-locker',
      opening: { viewed: { distanceM: 0.9, eyeAboveM: 0, reachM: 0.9 } },
    }),
};
