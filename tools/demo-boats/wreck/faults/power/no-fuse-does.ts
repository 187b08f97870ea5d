import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A pump whose sheet states a fuse below its own current. */
export const powerNoFuseDoes: Fault = {
  rule: 'power/no-fuse-does',
  about: ['wash-pump.dc', 'c-wash-pump'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'wash-pump', name: 'wash-down pump', place: 'cockpit' },
      maxA: 5,
      power: { fuseA: 3 },
    }),
};
