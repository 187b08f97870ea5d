import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A cooker behind thirty metres of lamp wire on a battery of its own. */
export const powerCannotWork: Fault = {
  rule: 'power/cannot-work',
  about: ['galley-bank', 'cooker.dc'],
  plant: (boat) =>
    withFedUnit(
      {
        ...boat,
        supply: {
          ...boat.supply,
          banks: [
            ...boat.supply.banks,
            {
              id: 'galley-bank',
              place: 'battery-box',
              chemistry: 'agm',
              nominalV: 12,
              capacityAh: 100,
              lowestV: 11.8,
              for: 'house',
              main: { kind: 'fuse', family: 'anl', distance: taped(0.05), ratingA: 30 },
              isolator: true,
            },
          ],
          panels: [
            ...boat.supply.panels,
            {
              id: 'galley-panel',
              place: 'fore-cabin',
              from: 'galley-bank',
              feeder: { length: taped(15), areaMm2: 2.5 },
              mainA: 30,
              circuits: [],
            },
          ],
        },
      },
      {
        kit: { id: 'cooker', name: 'cooker', place: 'bilge-well' },
        maxA: 30,
        power: { typical: 10, max: 350, unit: 'W', behaves: 'power' },
        circuit: { ratingA: 50 },
        panel: 'galley-panel',
      },
    ),
};
