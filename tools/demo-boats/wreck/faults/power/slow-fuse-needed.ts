import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A windscreen wiper that starts with many times what it draws. */
export const powerSlowFuseNeeded: Fault = {
  rule: 'power/slow-fuse-needed',
  about: ['c-wiper', 'wiper.dc'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'wiper', name: 'windscreen wiper', place: 'helm' },
      maxA: 3,
      power: { peak: 12 },
    }),
};
