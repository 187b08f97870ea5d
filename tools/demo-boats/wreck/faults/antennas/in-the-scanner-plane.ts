import { withDomeBeside } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** A position antenna beside the dome on the high pole, 0.9 m off and in the plane it turns in. */
export const antennasInTheScannerPlane: Fault = {
  rule: 'antennas/in-the-scanner-plane',
  about: ['high-dome', 'high-mushroom'],
  plant: (boat) =>
    withDomeBeside(boat, {
      from: 'stern-locker',
      dome: {
        id: 'pole-high',
        name: 'high pole',
        at: [3.6, 1.5, 7],
        unit: { id: 'high-dome', name: 'dome on the high pole' },
      },
      other: {
        id: 'pole-arm',
        name: 'arm of the high pole',
        at: [2.7, 1.5, 7],
        unit: {
          id: 'high-mushroom',
          name: 'position antenna beside the dome',
          sheet: { kind: 'position-antenna', antenna: { for: ['position'] } },
        },
      },
    }),
};
