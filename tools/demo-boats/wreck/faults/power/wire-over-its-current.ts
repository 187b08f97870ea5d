import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';
import { soundBank, soundPanel, withMore } from '../../supply-parts.ts';

/** A heater beside its 24 V battery, on bell wire. */
export const powerWireOverItsCurrent: Fault = {
  rule: 'power/wire-over-its-current',
  about: ['berth-heater.dc', 'c-berth-heater'],
  plant: (boat) =>
    withFedUnit(
      withMore(boat, {
        banks: [soundBank('heater-bank', { nominalV: 24, capacityAh: 60, lowestV: 23.6 })],
        panels: [soundPanel('heater-fuses', 'heater-bank')],
      }),
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
