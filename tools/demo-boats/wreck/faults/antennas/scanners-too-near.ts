import { withDome, withSpot } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** Two domes side by side on one plate, the one a little higher. */
export const antennasScannersTooNear: Fault = {
  rule: 'antennas/scanners-too-near',
  about: ['twin-dome-one', 'twin-dome-two'],
  plant: (boat) => {
    const one = withSpot(boat, { id: 'plate-low', name: 'plate aloft', at: [1, -1, 11], from: 'stern-locker' });
    const two = withSpot(one, { id: 'plate-up', name: 'step on the plate', at: [1, 0.2, 11.4], from: 'stern-locker' });
    return withDome(withDome(two, { id: 'twin-dome-one', name: 'first of two domes', place: 'plate-low' }), {
      id: 'twin-dome-two',
      name: 'second of two domes',
      place: 'plate-up',
    });
  },
};
