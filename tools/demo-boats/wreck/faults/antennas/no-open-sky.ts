import { withAloft } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** A position antenna lies in the locker of the switch panel, under a deck of steel. */
export const antennasNoOpenSky: Fault = {
  rule: 'antennas/no-open-sky',
  about: ['hidden-mushroom'],
  plant: (boat) =>
    withAloft(boat, {
      id: 'hidden-mushroom',
      name: 'position antenna in the locker',
      place: 'panel-locker',
      sheet: { kind: 'position-antenna', antenna: { for: ['position'] } },
    }),
};
