import { withDome, withSpot } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** A pulse radar stands on the cabin side, at the height of the head of who stands beside it. */
export const antennasPeopleInTheBeam: Fault = {
  rule: 'antennas/people-in-the-beam',
  about: ['low-dome', 'side-seat'],
  plant: (boat) => {
    const side = withSpot(boat, { id: 'cabin-side', name: 'cabin side', at: [5, -1, 2.5], from: 'panel-locker' });
    const seat = withSpot(side, {
      id: 'side-seat',
      name: 'seat on the side deck',
      at: [4.4, -0.5, 1.2],
      from: 'panel-locker',
      soleZM: 0.9,
    });
    return withDome(seat, {
      id: 'low-dome',
      name: 'scanner on the cabin side',
      place: 'cabin-side',
      own: { sends: 'pulses', peakKw: 4, peopleM: 2.8 },
    });
  },
};
