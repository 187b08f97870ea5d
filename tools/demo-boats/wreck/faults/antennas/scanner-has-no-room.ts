import { withDomeBeside } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** A lamp was screwed on 0.35 m from the middle of a dome. */
export const antennasScannerHasNoRoom: Fault = {
  rule: 'antennas/scanner-has-no-room',
  about: ['cramped-dome', 'cramped-lamp'],
  plant: (boat) =>
    withDomeBeside(boat, {
      from: 'fore-cabin',
      dome: {
        id: 'cramped-pole',
        name: 'top of the pole',
        at: [7, 1, 13],
        unit: { id: 'cramped-dome', name: 'dome at the pole' },
      },
      other: {
        id: 'cramped-side',
        name: 'side of the pole',
        at: [7.35, 1, 13.1],
        unit: { id: 'cramped-lamp', name: 'lamp beside the dome', sheet: { kind: 'lamp' } },
      },
    }),
};
