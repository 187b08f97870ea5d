import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** A display that needs 165 mm with its plugs where 120 mm is free. */
export const fittingNoRoomBehind: Fault = {
  rule: 'fitting/no-room-behind',
  about: ['deep-screen', 'deep-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'deep-screen',
      name: 'screen that is deeper than the dash',
      place: 'stern-locker',
      sheet: { body: { widthMm: 250, heightMm: 160, depthMm: 85 }, plugsMm: 80 },
      opening: { behind: { depthMm: 120, how: 'taped' } },
    }),
};
