import type { Fault } from '../../fault.ts';
import { withSounder } from '../../sited-units.ts';

/** A transducer that comes; of its place nobody knows more than the name. */
export const sensorsNotMeasured: Fault = {
  rule: 'sensors/not-measured',
  about: ['spare-element'],
  plant: (boat) =>
    withSounder(boat, {
      kit: { id: 'spare-element', name: 'second depth element', fate: 'comes' },
    }),
};
