import type { Fault } from '../../fault.ts';
import { spot, withSounder } from '../../sited-units.ts';

/** A depth element in the stern, where the hole was easy to make. */
export const sensorsNearThePropeller: Fault = {
  rule: 'sensors/near-the-propeller',
  about: ['stern-element'],
  plant: (boat) =>
    withSounder(boat, {
      kit: { id: 'stern-element', name: 'depth element in the stern', fate: 'stays', site: {} },
      place: spot('stern-well', 'well beside the shaft', [1.5, 0.3, -0.3]),
    }),
};
