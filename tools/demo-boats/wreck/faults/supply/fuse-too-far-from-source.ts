import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { soundBank, soundPanel, withMore } from '../../supply-parts.ts';

/** The main fuse of a bank sits at the other end of the locker. */
export const supplyFuseTooFarFromSource: Fault = {
  rule: 'supply/fuse-too-far-from-source',
  about: ['far-bank'],
  plant: (boat) =>
    withMore(boat, {
      banks: [
        soundBank('far-bank', {
          main: { kind: 'fuse', family: 'anl', distance: taped(0.9), sheathed: false, ratingA: 40 },
        }),
      ],
      panels: [soundPanel('far-panel', 'far-bank')],
    }),
};
