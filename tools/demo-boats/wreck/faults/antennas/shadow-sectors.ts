import { withAloft, withDome, withSpot } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** A floodlight hangs a metre before a dome, right ahead. */
export const antennasShadowSectors: Fault = {
  rule: 'antennas/shadow-sectors',
  about: ['tall-dome'],
  plant: (boat) => {
    const pole = withSpot(boat, { id: 'pole-tall', name: 'tall pole', at: [3.4, -1.5, 9], from: 'stern-locker' });
    const ahead = withSpot(pole, {
      id: 'pole-spur',
      name: 'spur of the tall pole',
      at: [4.4, -1.5, 9],
      from: 'stern-locker',
    });
    return withAloft(withDome(ahead, { id: 'tall-dome', name: 'dome on the tall pole', place: 'pole-tall' }), {
      id: 'floodlight',
      name: 'floodlight before the dome',
      place: 'pole-spur',
      sheet: { kind: 'lamp', body: { widthMm: 300, heightMm: 200 } },
    });
  },
};
