import { withRadio, withSpot } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** The whip of a second-hand AIS stands 0.8 m beside that of the radio, at one level. */
export const antennasAntennasTooNear: Fault = {
  rule: 'antennas/antennas-too-near',
  about: ['radio-whip', 'finder-whip'],
  plant: (boat) =>
    withRadio(withSpot(boat, { id: 'pulpit-stbd', name: 'pulpit, starboard', at: [10.2, 0.8, 1.4], from: 'pulpit' }), {
      id: 'finder',
      name: 'second-hand AIS',
      place: 'fore-locker',
      whipAt: 'pulpit-stbd',
      hears: 'ais-targets',
      sends: { powerW: 2, mhz: 162 },
    }),
};
