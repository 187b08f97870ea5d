import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withMetalUnit } from '../../on-steel.ts';

/** A second-hand scanner whose base is its minus, bolted bare to the arch. */
export const isolationRadarBaseToHull: Fault = {
  rule: 'isolation/radar-base-to-hull',
  about: ['arch-radar'],
  plant: (boat) =>
    withMetalUnit(boat, {
      kit: { id: 'arch-radar', name: 'scanner on the arch', place: 'roof', tail: taped(0.4), mount: 'metal' },
      kind: 'radar',
      earthing: { bodyTo: 'negative' },
    }),
};
