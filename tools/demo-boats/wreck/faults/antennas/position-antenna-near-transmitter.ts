import { withAloft, withSpot } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** A position antenna was put on the pulpit, 1.2 m from the whip of the radio. */
export const antennasPositionAntennaNearTransmitter: Fault = {
  rule: 'antennas/position-antenna-near-transmitter',
  about: ['radio-whip', 'bow-mushroom'],
  plant: (boat) =>
    withAloft(withSpot(boat, { id: 'pulpit-port', name: 'pulpit, port', at: [10.2, -1.2, 1.4], from: 'pulpit' }), {
      id: 'bow-mushroom',
      name: 'position antenna on the pulpit',
      place: 'pulpit-port',
      sheet: { kind: 'position-antenna', antenna: { for: ['position'] } },
    }),
};
