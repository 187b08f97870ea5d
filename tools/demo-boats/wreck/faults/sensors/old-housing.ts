import type { Fault } from '../../fault.ts';
import { withSounder } from '../../sited-units.ts';

/** A new insert, bought for the housing that is there. */
export const sensorsOldHousing: Fault = {
  rule: 'sensors/old-housing',
  about: ['new-insert'],
  plant: (boat) =>
    withSounder(boat, {
      kit: {
        id: 'new-insert',
        name: 'new depth insert',
        fate: 'comes',
        site: { housing: 'old', tiltDeg: 2, headroomMm: 200, laminate: 'solid' },
      },
    }),
};
