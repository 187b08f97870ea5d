import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { soundBank, withMore } from '../../supply-parts.ts';

/** A panel hangs on a battery without any fuse. */
export const supplyNoFuseAtSource: Fault = {
  rule: 'supply/no-fuse-at-source',
  about: ['bare-bank', 'bare-panel'],
  plant: (boat) =>
    withMore(boat, {
      banks: [soundBank('bare-bank', { main: { kind: 'none' } })],
      panels: [
        {
          id: 'bare-panel',
          place: 'battery-box',
          from: 'bare-bank',
          feeder: { length: taped(1), areaMm2: 25 },
          freeWays: 4,
          circuits: [],
        },
      ],
    }),
};
