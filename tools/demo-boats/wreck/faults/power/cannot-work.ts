import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';
import { soundBank, soundPanel, withMore } from '../../supply-parts.ts';

/** A cooker behind fifteen metres of lamp wire on a battery of its own. */
export const powerCannotWork: Fault = {
  rule: 'power/cannot-work',
  about: ['cooker.dc', 'galley-bank'],
  plant: (boat) =>
    withFedUnit(
      withMore(boat, {
        banks: [
          soundBank('galley-bank', {
            capacityAh: 100,
            main: { kind: 'fuse', family: 'anl', distance: taped(0.05), ratingA: 30 },
          }),
        ],
        panels: [
          soundPanel('galley-panel', 'galley-bank', {
            place: 'fore-cabin',
            feeder: { length: taped(15), areaMm2: 2.5 },
            mainA: 30,
          }),
        ],
      }),
      {
        kit: { id: 'cooker', name: 'cooker', place: 'bilge-well' },
        maxA: 30,
        power: { typical: 10, max: 350, unit: 'W', behaves: 'power' },
        circuit: { ratingA: 50 },
        panel: 'galley-panel',
      },
    ),
};
