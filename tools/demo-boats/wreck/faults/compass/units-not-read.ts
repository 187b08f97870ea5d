import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A new fan for the cabin, of which nobody knows how strong its magnet is, hangs 2.3 m from the compass. */
export const compassUnitsNotRead: Fault = {
  rule: 'compass/units-not-read',
  about: ['compass'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: {
        id: 'cabin-fan',
        name: 'fan in the cabin',
        place: 'fore-cabin',
        tail: taped(0.5),
        fate: 'comes',
      },
      maxA: 0.4,
    }),
};
