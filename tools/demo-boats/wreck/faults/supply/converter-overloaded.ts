import type { Fault } from '../../fault.ts';
import { circuit, converterOf, soundPanel, wiredSheet, wiredUnit, withMore } from '../../supply-parts.ts';

/** A heater of 5.2 A on a converter of 3 A. */
export const supplyConverterOverloaded: Fault = {
  rule: 'supply/converter-overloaded',
  about: ['small-converter'],
  plant: (boat) =>
    withMore(boat, {
      sheets: [wiredSheet('seat-heater-kind', { power: { typical: 0.02, max: 5.2 } })],
      kit: [wiredUnit('seat-heater', 'heater of the seat')],
      dcdc: [converterOf('small-converter', { ratedA: 3 })],
      switches: [circuit('c-small-converter', ['small-converter'])],
      panels: [
        soundPanel('small-panel', 'small-converter', {
          place: 'panel-locker',
          mainA: 8,
          circuits: [circuit('c-seat-heater', ['seat-heater.dc'])],
        }),
      ],
    }),
};
