import { withSpot } from '../../aloft-units.ts';
import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withMetalUnit } from '../../on-steel.ts';

/** A second-hand scanner whose base is its minus, bolted bare to the arch. */
export const isolationRadarBaseToHull: Fault = {
  rule: 'isolation/radar-base-to-hull',
  about: ['arch-radar'],
  plant: (boat) =>
    withMetalUnit(
      withSpot(boat, { id: 'arch', name: 'arch over the cockpit', at: [2, 0, 5.4], from: 'stern-locker' }),
      {
        kit: { id: 'arch-radar', name: 'scanner on the arch', place: 'arch', tail: taped(0.4), mount: 'metal' },
        kind: 'radar',
        earthing: { bodyTo: 'negative' },
      },
    ),
};
