import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { soundBank, soundPanel, withMore } from '../../supply-parts.ts';

/** A blade fuse is the main of a bank. */
export const supplyInterruptTooLow: Fault = {
  rule: 'supply/interrupt-too-low',
  about: ['blade-bank'],
  plant: (boat) =>
    withMore(boat, {
      banks: [soundBank('blade-bank', { main: { kind: 'fuse', family: 'blade', distance: taped(0.05), ratingA: 40 } })],
      panels: [soundPanel('blade-panel', 'blade-bank')],
    }),
};
