import type { Fault } from '../../fault.ts';
import { circuit, soundBank, soundPanel, wiredSheet, wiredUnit, withMore } from '../../supply-parts.ts';

/** A lamp in the chain locker, and the panel there is full. */
export const supplyCircuitsShort: Fault = {
  rule: 'supply/circuits-short',
  about: ['full-panel', 'chain-lamp'],
  plant: (boat) =>
    withMore(boat, {
      sheets: [wiredSheet('chain-lamp-kind'), wiredSheet('anchor-lamp-kind')],
      kit: [
        wiredUnit('anchor-lamp', 'lamp over the anchor', { place: 'fore-locker' }),
        wiredUnit('chain-lamp', 'lamp in the chain locker', { place: 'fore-locker' }),
      ],
      banks: [soundBank('bow-bank', { place: 'fore-locker' })],
      panels: [
        soundPanel('full-panel', 'bow-bank', {
          place: 'fore-locker',
          freeWays: 0,
          circuits: [circuit('c-anchor-lamp', ['anchor-lamp.dc'])],
        }),
      ],
    }),
};
