import { withSpot } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** A seat was made in the bow, right beside the whip of the radio. */
export const antennasPeopleNearAntenna: Fault = {
  rule: 'antennas/people-near-antenna',
  about: ['radio-whip', 'bow-seat'],
  plant: (boat) =>
    withSpot(boat, { id: 'bow-seat', name: 'seat in the bow', at: [9.8, 0.4, 1.4], from: 'pulpit', soleZM: 1 }),
};
