import type { Fault } from '../../fault.ts';
import { circuit, soundBank, soundPanel, wiredSheet, wiredUnit, withMore } from '../../supply-parts.ts';

/** A lamp of 12 V on a panel of 24 V. */
export const supplyLowVoltUnitOnHighVoltPanel: Fault = {
  rule: 'supply/low-volt-unit-on-high-volt-panel',
  about: ['low-lamp', 'high-panel'],
  plant: (boat) =>
    withMore(boat, {
      sheets: [wiredSheet('low-lamp-kind', { power: { maxV: 16 } })],
      kit: [wiredUnit('low-lamp', 'lamp of 12 V')],
      banks: [soundBank('high-bank', { nominalV: 24, lowestV: 23 })],
      panels: [soundPanel('high-panel', 'high-bank', { circuits: [circuit('c-low-lamp', ['low-lamp.dc'])] })],
    }),
};
