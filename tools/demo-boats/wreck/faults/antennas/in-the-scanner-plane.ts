import { withAloft, withDome, withSpot } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** A position antenna beside the dome on the high pole, 0.9 m off and in the plane it turns in. */
export const antennasInTheScannerPlane: Fault = {
  rule: 'antennas/in-the-scanner-plane',
  about: ['high-dome', 'high-mushroom'],
  plant: (boat) => {
    const pole = withSpot(boat, { id: 'pole-high', name: 'high pole', at: [3.6, 1.5, 7], from: 'stern-locker' });
    const beside = withSpot(pole, {
      id: 'pole-arm',
      name: 'arm of the high pole',
      at: [2.7, 1.5, 7],
      from: 'stern-locker',
    });
    return withAloft(withDome(beside, { id: 'high-dome', name: 'dome on the high pole', place: 'pole-high' }), {
      id: 'high-mushroom',
      name: 'position antenna beside the dome',
      place: 'pole-arm',
      sheet: { kind: 'position-antenna', antenna: { for: ['position'] } },
    });
  },
};
