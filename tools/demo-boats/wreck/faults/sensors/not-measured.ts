import type { Fault } from '../../fault.ts';
import { spot, withSounder } from '../../sited-units.ts';

/** A transducer that comes; of its place nobody knows more than the name. */
export const sensorsNotMeasured: Fault = {
  rule: 'sensors/not-measured',
  about: ['spare-element'],
  plant: (boat) =>
    withSounder(boat, {
      kit: { id: 'spare-element', name: 'second depth element', fate: 'comes' },
      place: spot('some-well', 'somewhere ahead of the keel', [7.1, 0.3, -0.3]),
    }),
};
