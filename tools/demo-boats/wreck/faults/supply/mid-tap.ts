import type { Fault } from '../../fault.ts';
import { soundBank, soundPanel, withMore } from '../../supply-parts.ts';

/** 12 V taken from the middle of a bank of 24 V. */
export const supplyMidTap: Fault = {
  rule: 'supply/mid-tap',
  about: ['tap-panel', 'tap-bank'],
  plant: (boat) =>
    withMore(boat, {
      banks: [soundBank('tap-bank', { nominalV: 24, lowestV: 23 })],
      panels: [soundPanel('tap-panel', 'tap-bank', { tapV: 12 })],
    }),
};
