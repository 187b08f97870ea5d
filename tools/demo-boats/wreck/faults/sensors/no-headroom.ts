import type { Fault } from '../../fault.ts';
import { withSounder } from '../../sited-units.ts';

/** A depth element with the cabin sole 40 mm over it. */
export const sensorsNoHeadroom: Fault = {
  rule: 'sensors/no-headroom',
  about: ['low-element'],
  plant: (boat) =>
    withSounder(boat, {
      kit: { id: 'low-element', name: 'depth element under the sole', fate: 'stays', site: { headroomMm: 40 } },
    }),
};
