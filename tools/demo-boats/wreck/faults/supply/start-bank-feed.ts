import type { Fault } from '../../fault.ts';
import { circuit, soundBank, soundPanel, wiredSheet, wiredUnit, withMore } from '../../supply-parts.ts';

/** A lamp on the panel of the second engine. */
export const supplyStartBankFeed: Fault = {
  rule: 'supply/start-bank-feed',
  about: ['crank-bank', 'crank-lamp'],
  plant: (boat) =>
    withMore(boat, {
      sheets: [wiredSheet('crank-lamp-kind')],
      kit: [wiredUnit('crank-lamp', 'lamp by the second engine')],
      banks: [soundBank('crank-bank', { for: 'start', partedBy: 'apart' })],
      panels: [soundPanel('crank-panel', 'crank-bank', { circuits: [circuit('c-crank-lamp', ['crank-lamp.dc'])] })],
    }),
};
