import type { Fault } from '../../fault.ts';
import { withHoledPanel } from '../../holed-panel.ts';

/** A bezel hides the old hole, its side screws hang in it, and somebody wants no plate. */
export const fittingScrewsInAir: Fault = {
  rule: 'fitting/screws-in-air',
  about: ['screwed-screen', 'screwed-screen-hole'],
  plant: (boat) =>
    withHoledPanel(boat, {
      id: 'screwed-screen',
      name: 'screen with screws at its sides',
      place: 'aft-cabin',
      sheet: {
        cutout: {
          widthMm: 200,
          heightMm: 140,
          screws: [-112, 112].map((xMm) => ({ xMm, yMm: 0, holeMm: 4 })),
        },
      },
      opening: {
        hole: { shape: 'rectangle', widthMm: 230, heightMm: 120 },
        instead: { verdict: 'enlarge', reason: 'No plate on this dash.' },
      },
    }),
};
