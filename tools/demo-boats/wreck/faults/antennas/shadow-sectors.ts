import { withDomeBeside } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** A floodlight hangs a metre before a dome, right ahead. */
export const antennasShadowSectors: Fault = {
  rule: 'antennas/shadow-sectors',
  about: ['tall-dome'],
  plant: (boat) =>
    withDomeBeside(boat, {
      from: 'stern-locker',
      dome: {
        id: 'pole-tall',
        name: 'tall pole',
        at: [3.4, -1.5, 9],
        unit: { id: 'tall-dome', name: 'dome on the tall pole' },
      },
      other: {
        id: 'pole-spur',
        name: 'spur of the tall pole',
        at: [4.4, -1.5, 9],
        unit: {
          id: 'floodlight',
          name: 'floodlight before the dome',
          sheet: { kind: 'lamp', body: { widthMm: 300, heightMm: 200 } },
        },
      },
    }),
};
