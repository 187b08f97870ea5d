import { withAloft, withDome, withSpot } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** A lamp was screwed on 0.35 m from the middle of a dome. */
export const antennasScannerHasNoRoom: Fault = {
  rule: 'antennas/scanner-has-no-room',
  about: ['cramped-dome', 'cramped-lamp'],
  plant: (boat) => {
    const top = withSpot(boat, { id: 'cramped-pole', name: 'top of the pole', at: [7, 1, 13], from: 'fore-cabin' });
    const side = withSpot(top, {
      id: 'cramped-side',
      name: 'side of the pole',
      at: [7.35, 1, 13.1],
      from: 'fore-cabin',
    });
    return withAloft(withDome(side, { id: 'cramped-dome', name: 'dome at the pole', place: 'cramped-pole' }), {
      id: 'cramped-lamp',
      name: 'lamp beside the dome',
      place: 'cramped-side',
      sheet: { kind: 'lamp' },
    });
  },
};
