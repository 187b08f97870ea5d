import type { Fault } from '../../fault.ts';
import { spot, withSounder } from '../../sited-units.ts';

/** A depth element a hand’s breadth from the keel. */
export const sensorsBesideTheKeel: Fault = {
  rule: 'sensors/beside-the-keel',
  about: ['keel-element'],
  plant: (boat) =>
    withSounder(boat, {
      kit: { id: 'keel-element', name: 'depth element beside the keel', fate: 'stays', site: {} },
      place: spot('keel-side', 'beside the keel', [4.5, 0.1, -0.4]),
    }),
};
