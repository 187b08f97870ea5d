import type { Fault } from '../../fault.ts';
import { spot, withFluxgate } from '../../sited-units.ts';

/** A heading sensor stowed in a locker of steel, because it was dry there. */
export const compassHeadingSensorInSteel: Fault = {
  rule: 'compass/heading-sensor-in-steel',
  about: ['locker-fluxgate'],
  plant: (boat) =>
    withFluxgate(boat, {
      id: 'locker-fluxgate',
      name: 'fluxgate in the paint locker',
      place: spot('paint-locker', 'paint locker of steel', [11.8, 0, -1.3]),
      site: { steelLocker: true },
    }),
};
