import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A heater beside its 24 V battery, on bell wire. */
export const powerWireOverItsCurrent: Fault = {
  rule: 'power/wire-over-its-current',
  about: ['berth-heater.dc', 'c-berth-heater'],
  plant: (boat) =>
    withFedUnit(
      {
        ...boat,
        supply: {
          ...boat.supply,
          banks: [
            ...boat.supply.banks,
            {
              id: 'heater-bank',
              place: 'battery-box',
              chemistry: 'agm',
              nominalV: 24,
              capacityAh: 60,
              lowestV: 23.6,
              for: 'house',
              main: { kind: 'fuse', family: 'anl', distance: taped(0.05), ratingA: 40 },
              isolator: true,
            },
          ],
          panels: [
            ...boat.supply.panels,
            {
              id: 'heater-fuses',
              place: 'battery-box',
              from: 'heater-bank',
              feeder: { length: taped(0.6), areaMm2: 25 },
              mainA: 40,
              circuits: [],
            },
          ],
        },
      },
      {
        kit: { id: 'berth-heater', name: 'cabin heater', place: 'battery-box', tail: taped(0.25) },
        maxA: 14,
        power: { minV: 18 },
        circuit: { ratingA: 20 },
        panel: 'heater-fuses',
        wireMm2: 0.75,
      },
    ),
};
