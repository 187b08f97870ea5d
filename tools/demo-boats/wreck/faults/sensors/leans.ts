import type { Fault } from '../../fault.ts';
import { withSounder } from '../../sited-units.ts';

/** A depth element where the bow rises, without a block. */
export const sensorsLeans: Fault = {
  rule: 'sensors/leans',
  about: ['bow-element'],
  plant: (boat) =>
    withSounder(boat, {
      kit: { id: 'bow-element', name: 'depth element in the rise of the bow', fate: 'stays', site: { tiltDeg: 14 } },
    }),
};
